/** Guards for counts: whole numbers. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { quantity } from '../units/index.js';
import { showInWords } from '../units/internal.js';
import { decide } from './decide.js';
import type { NotAWholeCount } from './errors.js';
import { type Guard, guard, pathOf } from './guards.js';
import { constant } from './leaves.js';
import type { Derived } from './node.js';
import { rounded } from './record.js';

/** A count must be whole. @example whole('number of rails', given('number of rails', ratio('1.5'))).decision.holds // false */
export const whole = (what: string, count: Derived<'ratio'>): Guard<NotAWholeCount> =>
  guard(decide(rounded(null, count, quantity(1, 'ratio'), 'nearest'), '=', count), () => ({
    chapter: 'trace',
    tag: 'NotAWholeCount',
    what,
    found: showInWords(count.value),
    ...pathOf(count.why),
  }));
/** A count from a program: a whole number from one to what a trailer may have. @example wholeCount('axles', 2.5)._tag // Left */
export function wholeCount(what: string, found: number, most = 1000): Either<NotAWholeCount, Derived<'ratio'>> {
  if (!Number.isInteger(found) || found < 1 || found > most)
    return left({ chapter: 'trace', tag: 'NotAWholeCount', what, found: String(found), most });
  return right(constant(quantity(found, 'ratio'), what));
}
