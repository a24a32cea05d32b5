/** The interval between the greatest of several low limits and the least of several high limits. */

import { type Decision, type Derived, decide, greatestOf, leastOf, minus, result } from '../../trace/index.js';
import { compare } from '../../units/index.js';

/** A limit on one end: its name and its position. */
export interface EndLimit {
  readonly name: string;
  readonly at: Derived<'in'>;
}

/** One end of the interval and the limits that set it. */
export interface SpanEnd<L extends EndLimit = EndLimit> {
  readonly at: Derived<'in'>;
  /** Every limit that sets this end; more than one when they tie. */
  readonly setBy: readonly L[];
}

/** The interval. May be empty (upper below lower); then `width` is negative and both ends name the conflicting limits. */
export interface Span<L extends EndLimit = EndLimit> {
  readonly lower: SpanEnd<L>;
  readonly upper: SpanEnd<L>;
  /** Upper minus lower; negative when there is no room. */
  readonly width: Derived<'in'>;
  readonly empty: boolean;
}

/**
 * Makes the interval. The recorded steps do not depend on which limit governs, so a study can recompute them; `setBy` and
 * `empty` are read from the finished figures. `empty` compares the two ends instead of the width with zero, because two
 * quotients that tie may differ in the last digit; that comparison is added to `decisions`.
 */
export function spanOf<L extends EndLimit>(
  name: string,
  low: readonly L[],
  high: readonly L[],
  decisions: Decision[],
): Span<L> {
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
  const crossed = decide(lower, '>', upper);
  decisions.push(crossed);
  return {
    lower: { at: lower, setBy: tied(low, lower) },
    upper: { at: upper, setBy: tied(high, upper) },
    width: result(`width of ${name}`, minus(upper, lower)),
    empty: crossed.holds,
  };
}
