/** Single pieces of cargo: the one most demanding of the ramps, and all but one. The order of the list does not matter. */
import type { PlacedItem } from '../../load/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import {
  type AnyLength,
  constant,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  inInches,
  inPounds,
  minus,
  result,
  times,
} from '../../trace/index.js';
import { lb, type Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';

export interface Piece {
  readonly index: number;
  readonly cargo: DecodedCargo;
  readonly decisions: readonly Decision[];
}

/** A piece, and the figure by which it is held against the others. */
interface Candidate<U extends Unit> {
  readonly index: number;
  readonly cargo: DecodedCargo;
  readonly by: Derived<U>;
}

/** The one with the greatest figure; of several alike, the first. */
function greatest<U extends Unit>(candidates: readonly Candidate<U>[]): Piece | undefined {
  const decisions: Decision[] = [];
  let [most] = candidates;
  for (const next of candidates.slice(1)) {
    if (most === undefined) continue;
    const more = decide<Unit>(next.by, '>', most.by);
    decisions.push(more);
    if (more.holds) most = next;
  }
  return most && { index: most.index, cargo: most.cargo, decisions };
}

const byWeight = (cargo: DecodedCargo, index: number): Candidate<'lb'> => ({
  index,
  cargo,
  by: inPounds(`${cargo.name} weight`, cargo.weight),
});

/** The heaviest piece of cargo, assumed to be the one driven up the ramps because the spec does not say. Of several alike, any. */
export const heaviestPiece = (cargo: readonly DecodedCargo[]): Piece | undefined => greatest(cargo.map(byWeight));

const noWeight = constant(lb(0));

/** Whether a piece weighs zero in the spec: then its ramps and tiedowns cannot be checked. */
export const weighsNothing = (cargo: DecodedCargo): Decision =>
  decide(inPounds(`${cargo.name} weight`, cargo.weight), '<=', noWeight);

/** The heaviest axle of a machine; undefined where its axle loads are unknown. */
export const heaviestAxle = ({ axles = [] }: DecodedCargo): Derived<'lb'> | undefined =>
  axles.length === 0
    ? undefined
    : greatestOf(
        'heaviest machine axle',
        axles.map((axle, i) => inPounds(`load of machine axle ${i + 1}`, axle)),
      );

/** Of the pieces with known axle loads, the one with the heaviest axle: a lighter machine may have it. */
export const pieceOfHeaviestAxle = (cargo: readonly DecodedCargo[]): Piece | undefined =>
  greatest(
    collected(cargo, (piece, index) => {
      const by = heaviestAxle(piece);
      return by === undefined ? [] : [{ index, cargo: piece, by }];
    }),
  );

/**
 * The piece that pulls the ball up most while it comes on over the deck's edge, with all others in their places: the
 * greatest `weight (edge - place)`. Where a place is unknown, the heaviest piece, and of several equal ones the one without a place:
 * its own place does not matter.
 */
export function pieceThatLiftsMost(
  cargo: readonly DecodedCargo[],
  placed: readonly (PlacedItem | undefined)[],
  deckRear: AnyLength,
): Piece | undefined {
  const edge = inInches('deck rear', deckRear);
  const pulls = collected(cargo, (piece, index) => {
    const item = placed[index];
    if (item === undefined) return [];
    const { by: weight } = byWeight(piece, index);
    const reach = minus(edge, inInches(`${piece.name} position`, item.at));
    return [{ index, cargo: piece, by: result(`pull of ${piece.name} on the ball`, times(weight, reach)) }];
  });
  if (pulls.length === cargo.length) return greatest(pulls);
  const weights = cargo.map(byWeight);
  const isPlaced = ({ index }: Candidate<'lb'>): boolean => placed[index] !== undefined;
  return greatest([...weights.filter((each) => !isPlaced(each)), ...weights.filter(isPlaced)]);
}

/** Of several answers the one with the least figure; every comparison is kept. Of several alike, any. */
export function withLeast<A extends object>(
  answers: readonly A[],
  figure: (answer: A) => Derived<'in'>,
): { readonly found: A; readonly decisions: readonly Decision[] } | undefined {
  const [first, ...more] = answers;
  if (first === undefined) return undefined;
  const decisions: Decision[] = [];
  let found = first;
  for (const next of more) {
    const less = decide(figure(next), '<', figure(found));
    decisions.push(less);
    if (less.holds) found = next;
  }
  return { found, decisions };
}

/** Every other piece at its place; undefined when one of the places is not known. */
export function othersPlaced(
  placed: readonly (PlacedItem | undefined)[],
  index: number,
): readonly PlacedItem[] | undefined {
  const others = placed.filter((_, i) => i !== index);
  const known = others.filter((item) => item !== undefined);
  return known.length < others.length ? undefined : known;
}
