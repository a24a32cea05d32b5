/** The pieces of cargo apart: the heaviest of them, and all but one. */
import type { PlacedItem } from '../../load/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import { type Decision, decide, inPounds } from '../../trace/index.js';

export interface Piece {
  readonly index: number;
  readonly cargo: DecodedCargo;
  readonly decisions: readonly Decision[];
}

/** The heaviest piece, the first of several alike: what climbs the ramps, for want of a better word from the spec. */
export function heaviestPiece(cargo: readonly DecodedCargo[]): Piece | undefined {
  const decisions: Decision[] = [];
  let [index, heaviest] = [0, cargo[0]];
  for (const [i, next] of cargo.entries()) {
    if (i === 0 || heaviest === undefined) continue;
    const heavier = decide(
      inPounds(`${next.name} weight`, next.weight),
      '>',
      inPounds(`${heaviest.name} weight`, heaviest.weight),
    );
    decisions.push(heavier);
    if (heavier.holds) [index, heaviest] = [i, next];
  }
  return heaviest === undefined ? undefined : { index, cargo: heaviest, decisions };
}

/** Every other piece where it stands; undefined when the place of one of them is not known. */
export function othersPlaced(
  placed: readonly (PlacedItem | undefined)[],
  index: number,
): readonly PlacedItem[] | undefined {
  const others = placed.filter((_, i) => i !== index);
  const known = others.filter((item) => item !== undefined);
  return known.length < others.length ? undefined : known;
}
