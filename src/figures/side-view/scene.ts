/** What the side view shows, read from an assessment: places in inches behind the coupler, figures with their working. */
import type { Assessment } from '../../assessment/index.js';
import { tireGeometry } from '../../tires/index.js';
import { type Derived, inInches } from '../../trace/index.js';
import { plain } from '../drawing/numbers.js';
import { type DeckWindow, windowsOf } from '../placement/windows.js';
import { downward, inches, type LoadArrow, upward } from './loads.js';

/** A piece of cargo; one without a length is a mark and no box. */
export interface Piece {
  readonly name: string;
  readonly at: number | undefined;
  readonly front: number | undefined;
  readonly length: number | undefined;
}

export interface Wheel {
  readonly at: number;
  readonly radius: number;
}

/** A place to be dimensioned from the coupler. */
export interface Measured {
  readonly name: string;
  readonly at: Derived<'in'>;
}

export interface Scene {
  readonly gooseneck: boolean;
  readonly name: string;
  readonly deck: { readonly front: number; readonly rear: number } | undefined;
  /** Deck above the ground; taken as 24 in where nobody says. */
  readonly height: number;
  readonly wheels: readonly Wheel[];
  readonly group: number | undefined;
  readonly pieces: readonly Piece[];
  readonly down: readonly LoadArrow[];
  readonly up: readonly LoadArrow[];
  readonly measures: readonly Measured[];
  readonly windows: readonly DeckWindow[];
  /** Height of the ball above its level height. */
  readonly ballAboveLevel: Derived<'in'> | undefined;
}

/** Half the diameter of the tire by its size; 15 in where the size does not say. */
function radiusOf(designation: string | undefined): number {
  const found = designation === undefined ? undefined : tireGeometry(designation);
  if (found === undefined || found._tag === 'Left') return 15;
  const diameter = found.right.computed?.diameter ?? found.right.published[0]?.diameter;
  return diameter === undefined ? 15 : plain(diameter) / 2;
}

function piecesOf({ spec, weights }: Assessment): readonly Piece[] {
  return (spec.cargo ?? []).map(({ name, front, balancePoint, length }, i) => {
    const at = inches(weights.cargo[i]?.at);
    const behind = inches(balancePoint);
    const own = inches(front) ?? (at === undefined || behind === undefined ? undefined : at - behind);
    return { name, at, front: own, length: inches(length) };
  });
}

/** Everything the picture shows; what the spec does not say is left out of it. */
export function sceneOf(assessment: Assessment): Scene {
  const { spec, runningGear } = assessment;
  const { trailer } = spec;
  const cargo = spec.cargo ?? [];
  const measures: Measured[] = [];
  if (runningGear.group) measures.push({ name: 'to the middle of the axles', at: runningGear.group.at });
  if (trailer.deck) measures.push({ name: 'to the front of the deck', at: inInches('deck front', trailer.deck.front) });
  for (const { name, front } of cargo.slice(0, 3))
    if (front !== undefined) measures.push({ name: `to the front of ${name}`, at: inInches('front', front) });
  const deck = trailer.deck && { front: inches(trailer.deck.front) ?? 0, rear: inches(trailer.deck.rear) ?? 0 };
  return {
    gooseneck: trailer.hitch === 'gooseneck',
    name: trailer.name ?? 'trailer',
    deck,
    height: inches(trailer.ramps?.height) ?? 24,
    wheels: trailer.axles.flatMap(({ at, tires }) => {
      const place = inches(at);
      return place === undefined ? [] : [{ at: place, radius: radiusOf(tires?.designation) }];
    }),
    group: inches(runningGear.group?.at),
    pieces: piecesOf(assessment),
    down: downward(assessment),
    up: upward(assessment),
    measures,
    windows: windowsOf(assessment),
    ballAboveLevel: trailer.ballAboveLevel && inInches('ball above level', trailer.ballAboveLevel),
  };
}
