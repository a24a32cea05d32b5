/** The count of the general section: by length and weight of the article. */
import {
  constant,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  minus,
  over,
  plus,
  result,
  roundedUp,
} from '../../trace/index.js';
import { foot, lb, ratio } from '../../units/index.js';

/** A count of tiedowns that the rule prints. */
export const count = (digits: number): Derived<'ratio'> => constant(ratio(digits));
const tenths = (symbol: string, length: Derived<'ft'>): Derived<'ratio'> =>
  roundedUp(symbol, over(length, constant(foot(10))), ratio(1));

/** 393.110: by length and weight for an article that is not blocked, by length alone for one that is. */
export function generalCount(
  weight: Derived<'lb'>,
  length: Derived<'ft'>,
  blocked: boolean,
): { readonly minimum: Derived<'ratio'>; readonly decisions: readonly Decision[] } {
  if (blocked)
    return {
      minimum: greatestOf('tiedowns by length, blocked forward', [
        count(1),
        tenths('tens of feet, rounded up', length),
      ]),
      decisions: [],
    };
  const short = decide(length, '<=', constant(foot(5)));
  const lightWeight = decide(weight, '<=', constant(lb(1100)));
  if (short.holds && lightWeight.holds) return { minimum: count(1), decisions: [short, lightWeight] };
  const ten = decide(length, '<=', constant(foot(10)));
  const decisions = [short, lightWeight, ten];
  if (ten.holds) return { minimum: count(2), decisions };
  const beyond = result('length beyond 10 ft', minus(length, constant(foot(10))));
  return { minimum: result('tiedowns by length', plus(2, tenths('tiedowns beyond 10 ft', beyond))), decisions };
}
