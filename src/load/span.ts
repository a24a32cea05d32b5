/** An interval that several limits leave: the greatest of the low limits to the least of the high ones. */

import { type Derived, greatestOf, leastOf, minus, result } from '../trace/index.js';
import { compare } from '../units/index.js';

/** A limit on one end, by name, and where it stands. */
export interface EndLimit {
  readonly name: string;
  readonly at: Derived<'in'>;
}

export interface SpanEnd<L extends EndLimit = EndLimit> {
  readonly at: Derived<'in'>;
  /** Every limit that sets this end; more than one when they tie. */
  readonly setBy: readonly L[];
}

/** The interval. It may be turned inside out: then it is empty, the width is negative, and both ends say which limits conflict. */
export interface Span<L extends EndLimit = EndLimit> {
  readonly lower: SpanEnd<L>;
  readonly upper: SpanEnd<L>;
  /** Upper minus lower; negative when there is no room. */
  readonly width: Derived<'in'>;
  readonly empty: boolean;
}

/**
 * The steps are the same whichever limit governs, so the working runs on a study's tape; `setBy` and `empty` are read
 * off the finished figures. The ends are compared with one another, not the width with zero: two quotients that tie may
 * leave a last digit when subtracted.
 */
export function spanOf<L extends EndLimit>(name: string, low: readonly L[], high: readonly L[]): Span<L> {
  const lower = greatestOf(
    `front end of ${name}`,
    low.map(({ at }) => at),
  );
  const upper = leastOf(
    `rear end of ${name}`,
    high.map(({ at }) => at),
  );
  const tied = (limits: readonly L[], end: Derived<'in'>): readonly L[] =>
    limits.filter(({ at }) => compare(at.value, end.value) === 0);
  return {
    lower: { at: lower, setBy: tied(low, lower) },
    upper: { at: upper, setBy: tied(high, upper) },
    width: result(`width of ${name}`, minus(upper, lower)),
    empty: compare(lower.value, upper.value) > 0,
  };
}
