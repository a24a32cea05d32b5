/** Which checks are closest to their limit? */
import { compareProducts } from '../units/internal.js';
import type { Check } from './check.js';

/** Every check that uses the greatest share of its limit; more than one when they tie. Shares are compared by cross-multiplication. @example tightest([checkLoad(rating('GVWR', lb(14000)), weight('gross', grossWeight))])[0].what // gross against GVWR */
export function tightest<C extends Pick<Check, 'limit' | 'load'>>(checks: readonly C[]): readonly C[] {
  let worst: C[] = [];
  for (const next of checks) {
    const [best] = worst;
    const order =
      best === undefined ? 1 : compareProducts(next.load.value, best.limit.value, best.load.value, next.limit.value);
    if (order > 0) worst = [next];
    else if (order === 0) worst.push(next);
  }
  return worst;
}
