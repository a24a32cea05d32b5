/** The pieces that getting on is asked of, found once for an answer: loading, tail and payload read the same. */
import type { DecodedSpec } from '../../spec/index.js';
import { heaviestPiece, type Piece, pieceOfHeaviestAxle } from './cargo-pieces.js';

export interface Climbers {
  /** The heaviest piece, where ramps ask for it, or the tail of a deck whose end is unknown. */
  readonly heaviest: Piece | undefined;
  /** The piece that the rating of the ramps is held against, where they have one: by machine the heaviest, by axle that of the heaviest axle. */
  readonly borne: Piece | undefined;
}

/** Only what is asked is compared: each comparison is one more way for a study to go. */
export function climbersOf({ trailer: { ramps, deck }, cargo = [] }: DecodedSpec): Climbers {
  const heaviest = ramps === undefined && deck !== undefined ? undefined : heaviestPiece(cargo);
  if (ramps?.rating === undefined || ramps.basis === undefined) return { heaviest, borne: undefined };
  return { heaviest, borne: ramps.basis === 'machine' ? heaviest : pieceOfHeaviestAxle(cargo) };
}
