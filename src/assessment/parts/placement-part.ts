/** What an assessment says about the place of each piece of cargo. */
import type { HeaviestMachine, PlacedLimit, PlacementWindow } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';
import { compare } from '../../units/index.js';
import type { Part } from './part-of-answer.js';

/** A piece of cargo whose length and balance point are known, and where it may be placed. */
export interface PiecePlacement {
  /** The piece, as the spec names it. */
  readonly name: string;
  /** Its place in the list of cargo. */
  readonly index: number;
  /** The places of its balance point that keep every limit, the others staying put. */
  readonly window: PlacementWindow;
  /** The heaviest piece of this shape that has a place. */
  readonly heaviest?: HeaviestMachine;
  /** Where its balance point is now, and the limits it does not keep to there. */
  readonly now?: { readonly at: Derived<'in'>; readonly breaks: readonly PlacedLimit[] };
}

export interface PlacePart extends Part {
  /** Each piece with known length and balance point. */
  readonly pieces: readonly PiecePlacement[];
}

/** The limits that a place does not keep to: further forward than a front end, or further back than a rear end. */
export const placeNow = (at: Derived<'in'>, limits: readonly PlacedLimit[]): NonNullable<PiecePlacement['now']> => ({
  at,
  breaks: limits.filter((limit) => compare(at.value, limit.at.value) === (limit.end === 'front' ? -1 : 1)),
});
