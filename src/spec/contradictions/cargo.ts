/** Contradictions of a piece of cargo: a place given twice, a balance point beyond its rear end, a low point behind its rear axle. */

import type { Problem } from '../errors.js';
import type { DecodedCargo } from '../types/cargo.js';
import { contradiction, type Found, gathered, inOrder, nothingFound, type Partly } from './found.js';

type Cargo = Partly<DecodedCargo>;

/** A place given in two ways. */
const placedTwice = ({ at, front }: Cargo, path: string): readonly Problem[] =>
  at === undefined || front === undefined
    ? []
    : [
        contradiction(
          `${path}.at`,
          'a position beside the place of the front face',
          'left out, or "front" left out: "at", or "front" with "balancePoint"',
        ),
        contradiction(`${path}.front`, 'the place of the front face beside a position', 'left out, or "at" left out'),
      ];

/** Contradictions of all pieces. */
export function cargoContradictions(cargo: readonly (Cargo | undefined)[]): Found {
  const found = cargo.map((piece, i): Found => {
    if (piece === undefined) return nothingFound;
    const path = `cargo.${i}`;
    const inside = inOrder([`${path}.balancePoint`, 'its balance point', piece.balancePoint], '<=', [
      `${path}.length`,
      'its length',
      piece.length,
    ]);
    const between = inOrder(
      [`${path}.lowPoint.behindFrontAxle`, 'its low point', piece.lowPoint?.behindFrontAxle],
      '<',
      [`${path}.wheelbase`, 'its wheelbase', piece.wheelbase],
    );
    return gathered([{ problems: placedTwice(piece, path), decisions: [] }, inside, between]);
  });
  return gathered(found);
}
