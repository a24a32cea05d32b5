/** What can be changed, by whom, and how far. */
import type { Assessment } from '../../assessment/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import type { Derived } from '../../trace/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';

/** Who can pull a lever. The maker's label is no lever: it is never proposed. */
export type Who = 'driver' | 'yard' | 'shop';

interface Lever {
  readonly name: string;
  readonly who: Who;
  /** Trouble it makes; the proposals are sorted by it. */
  readonly cost: number;
}

/** A figure that can be moved in steps, both ways, between two ends. */
export interface Slide extends Lever {
  readonly kind: 'slide';
  readonly path: string;
  readonly unit: 'in' | 'lb' | 'ratio';
  readonly now: number;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  readonly says: (to: number) => string;
}

/** A part that can be had with greater ratings: what it needs follows from its loads. */
export interface Part extends Lever {
  readonly kind: 'part';
  readonly paths: readonly string[];
  readonly step: number;
}

/** Ready-made changes, the smallest first. */
export interface Choice extends Lever {
  readonly kind: 'choice';
  /** Gone when the option is enough: a remark that asks attention, by its tag and a word of it. */
  readonly settles?: { readonly tags: readonly string[]; readonly word: string };
  readonly options: readonly { readonly says: string; readonly changes: Readonly<Record<string, unknown>> }[];
}

export type AnyLever = Slide | Part | Choice;

type Length = Derived<'in' | 'ft' | 'mi' | 'mm' | 'cm' | 'm'>;
const inchesOf = ({ value }: Length): number =>
  (convert(value as Quantity<'ft'>, 'in') as Quantity<Unit>).value.toNumber();
const poundsOf = ({ value }: Derived<'lb' | 'kg' | 't'>): number =>
  (convert(value as Quantity<'kg'>, 'lb') as Quantity<Unit>).value.toNumber();
const shown = (at: number): string => String(Math.round(at * 100) / 100);

interface Stretch {
  readonly front: number;
  readonly rear: number;
}

function stretchOf({ front, length }: DecodedCargo): Stretch | undefined {
  if (front === undefined || length === undefined) return undefined;
  const at = inchesOf(front);
  return { front: at, rear: at + inchesOf(length) };
}

/** How far a piece can be moved: on the deck, and not over another piece that stands ahead of it or behind it. */
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

function moves(spec: DecodedSpec): readonly Slide[] {
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

function unloading({ cargo = [] }: DecodedSpec): readonly Slide[] {
  return cargo.flatMap((piece, i): readonly Slide[] => {
    if (piece.axles !== undefined) return [];
    const now = poundsOf(piece.weight);
    return [
      {
        kind: 'slide',
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

function bars({ tow }: DecodedSpec): readonly Slide[] {
  const restore = tow?.bars?.restore;
  if (restore === undefined) return [];
  const now = restore.value.value.toNumber();
  return [
    {
      kind: 'slide',
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

const parts: readonly Omit<Part, 'kind' | 'step'>[] = [
  { name: 'stronger ramps', who: 'yard', cost: 5, paths: ['trailer.ramps.rating'] },
  { name: 'stronger safety chains', who: 'yard', cost: 5, paths: ['trailer.chains.each'] },
  { name: 'another jack', who: 'shop', cost: 8, paths: ['trailer.jack.rating'] },
  { name: 'another ball', who: 'shop', cost: 7, paths: ['tow.ball.gross'] },
  { name: 'another ball mount', who: 'shop', cost: 7, paths: ['tow.ballMount.gross', 'tow.ballMount.tongue'] },
  { name: 'another coupler', who: 'shop', cost: 9, paths: ['trailer.coupler.gross', 'trailer.coupler.tongue'] },
  { name: 'another receiver', who: 'shop', cost: 10, paths: ['tow.receiver.gross', 'tow.receiver.tongue'] },
];

/** The parts of the hitch, that can be had stronger. */
export const hitchParts: readonly Part[] = parts
  .filter(({ paths }) => paths.some((path) => /ball|coupler|receiver/i.test(path)))
  .map((part) => ({ ...part, kind: 'part', step: 50 }));

/** Tires at the pressure that is molded on them, where they run with less. */
function pressure({ trailer: { axles } }: DecodedSpec): readonly Choice[] {
  const changes: Record<string, unknown> = {};
  axles.forEach(({ tires }, i) => {
    const [run, molded] = [tires?.pressure, tires?.molded?.pressure];
    if (run === undefined || molded === undefined) return;
    if (run.value.value.lt(molded.value.value))
      changes[`trailer.axles.${i}.tires.pressure`] = `${molded.value.value.toFixed()} ${molded.value.unit}`;
  });
  return Object.keys(changes).length === 0
    ? []
    : [
        {
          kind: 'choice',
          name: 'tire pressure',
          who: 'driver',
          cost: 1,
          options: [{ says: 'bring the tires, cold, to the pressure molded on them', changes }],
        },
      ];
}

/** The same size of tire in the next load ranges, on every axle. Their wheels are checked as they stand. */
function tires({ trailer: { axles } }: DecodedSpec): readonly Choice[] {
  const letters = ['C', 'D', 'E', 'F', 'G', 'H'];
  const designation = axles[0]?.tires?.designation;
  const range = designation === undefined ? undefined : /\bLR([C-G])$/.exec(designation)?.[1];
  if (designation === undefined || range === undefined) return [];
  const options = letters.slice(letters.indexOf(range) + 1).map((letter) => {
    const next = designation.replace(/LR[C-G]$/, `LR${letter}`);
    return {
      says: `fit tires ${next} on wheels and valves rated for their pressure`,
      changes: Object.fromEntries(
        axles.flatMap(({ tires: fitted }, i) =>
          fitted === undefined
            ? []
            : [
                [
                  `trailer.axles.${i}.tires`,
                  { designation: next, count: fitted.count, fitment: fitted.fitment },
                ] as const,
              ],
        ),
      ),
    };
  });
  return [{ kind: 'choice', name: 'tires', who: 'shop', cost: 8, options }];
}

/** More tiedowns like the last one, for a piece whose tiedowns are not enough. */
function moreTiedowns({ spec: { cargo = [] }, attention }: Assessment, base: unknown): readonly Choice[] {
  if (!attention.some(({ tag }) => tag === 'Tiedowns')) return [];
  const written = (base as { readonly cargo?: readonly { readonly tiedowns?: readonly unknown[] }[] }).cargo;
  return cargo.flatMap(({ name }, i): readonly Choice[] => {
    const fitted = written?.[i]?.tiedowns;
    const last = fitted?.at(-1);
    if (fitted === undefined || last === undefined) return [];
    return [
      {
        kind: 'choice',
        name: `tiedowns of ${name}`,
        settles: { tags: ['Tiedowns'], word: `tiedowns of ${name} ` },
        who: 'yard',
        cost: 2,
        options: [1, 2, 3, 4].map((more) => ({
          says: `tie ${name} down with ${more} more of the last kind: ${fitted.length + more} in all`,
          changes: { [`cargo.${i}.tiedowns`]: [...fitted, ...Array.from({ length: more }, () => last)] },
        })),
      },
    ];
  });
}

/** Legs under the tail, strong enough for what pulls the ball up while loading. */
function rearLegs({ climb: { tail }, spec }: Assessment): readonly Choice[] {
  if (tail === undefined || tail.verdict === 'presses on the ball' || spec.trailer.rearLegs !== undefined) return [];
  const rated = Math.max(50, Math.ceil(tail.legs.value.value.toNumber() / 50 - 1e-9) * 50);
  return [
    {
      kind: 'choice',
      name: 'rear legs',
      settles: { tags: ['LoadingPullsBallUp', 'LoadingLiftsTruck'], word: '' },
      who: 'driver',
      cost: 1,
      options: [
        {
          says: `set legs under the tail before loading, rated for at least ${shown(rated)} lb together`,
          changes: { 'trailer.rearLegs': `${rated} lb` },
        },
      ],
    },
  ];
}

/** What has to be done whatever else is: legs while loading, tiedowns. Nothing else in a rig hangs on them. */
export const neededAnyhow = (assessment: Assessment, base: unknown): readonly Choice[] => [
  ...rearLegs(assessment),
  ...moreTiedowns(assessment, base),
];

/** Every other lever of a rig, the one that makes least trouble first. */
export function leversOf({ spec }: Assessment): readonly AnyLever[] {
  const all: readonly AnyLever[] = [
    ...moves(spec),
    ...pressure(spec),
    ...bars(spec),
    ...unloading(spec),
    ...parts.map((part): Part => ({ ...part, kind: 'part', step: 50 })),
    ...tires(spec),
  ];
  return [...all].sort((a, b) => a.cost - b.cost);
}
