/** Figures that people can move: the place of a piece, its weight, the bars. */
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { inchesOf, poundsOf, shown } from './figures.js';
import type { Slide } from './lever.js';

interface Stretch {
  readonly front: number;
  readonly rear: number;
}

function stretchOf({ front, length }: DecodedCargo): Stretch | undefined {
  if (front === undefined || length === undefined) return undefined;
  const at = inchesOf(front);
  return { front: at, rear: at + inchesOf(length) };
}

/** How far a piece can be moved: on the deck, and not over a piece ahead of it or behind it. */
function roomFor(
  { trailer: { deck }, cargo = [] }: DecodedSpec,
  index: number,
): { least: number; most: number } | undefined {
  const piece = cargo[index] as DecodedCargo;
  if (deck === undefined) return undefined;
  let [least, most] = [inchesOf(deck.front), inchesOf(deck.rear)];
  const mine = stretchOf(piece);
  if (mine === undefined) return { least, most };
  for (const [i, other] of cargo.entries()) {
    const its = i === index ? undefined : stretchOf(other);
    if (its === undefined) continue;
    if (mine.front >= its.rear) least = Math.max(least, its.rear);
    else if (mine.rear <= its.front) most = Math.min(most, its.front);
  }
  return { least, most: most - (mine.rear - mine.front) };
}

export function moves(spec: DecodedSpec): readonly Slide[] {
  return (spec.cargo ?? []).flatMap((piece, i): readonly Slide[] => {
    const key = piece.front === undefined ? 'at' : 'front';
    const place = piece[key];
    const room = roomFor(spec, i);
    if (place === undefined || room === undefined) return [];
    const now = inchesOf(place);
    const where = key === 'front' ? 'its front face' : 'its balance point';
    return [
      {
        kind: 'slide',
        word: 'move',
        name: `move ${piece.name}`,
        who: 'driver',
        cost: 1,
        path: `cargo.${i}.${key}`,
        unit: 'in',
        now,
        step: 0.25,
        ...room,
        says: (to) =>
          `move ${piece.name} ${shown(Math.abs(to - now))} in ${to > now ? 'rearward' : 'forward'}: ${where} ${shown(to)} in behind the coupler`,
      },
    ];
  });
}

export function unloading({ cargo = [] }: DecodedSpec): readonly Slide[] {
  return cargo.flatMap((piece, i): readonly Slide[] => {
    if (piece.axles !== undefined) return [];
    const now = poundsOf(piece.weight);
    return [
      {
        kind: 'slide',
        word: 'unload',
        name: `unload ${piece.name}`,
        who: 'driver',
        cost: 4,
        path: `cargo.${i}.weight`,
        unit: 'lb',
        now,
        step: 10,
        least: now / 2, // more than half off is another machine
        most: now,
        says: (to) => `take ${shown(now - to)} lb off ${piece.name}, or carry a lighter one: ${shown(to)} lb at most`,
      },
    ];
  });
}

export function bars({ tow }: DecodedSpec): readonly Slide[] {
  const restore = tow?.bars?.restore;
  if (restore === undefined) return [];
  const now = restore.value.value.toNumber();
  return [
    {
      kind: 'slide',
      word: 'bars',
      name: 'set the bars',
      who: 'driver',
      cost: 2,
      path: 'tow.bars.restore',
      unit: 'ratio',
      now,
      step: 0.01,
      least: 0.25,
      most: 0.95,
      says: (to) => `set the bars to restore ${shown(100 * to)} % of what the front axle lost`,
    },
  ];
}
