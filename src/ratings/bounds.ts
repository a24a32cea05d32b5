/** Several limits on one figure: the least of them, and whose it is. */

import { type Derived, leastOf, type Terms } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { compareFigures } from '../units/internal.js';

/** One limit and the part or rule it comes from. */
export interface Bound<U extends Unit = 'lb'> {
  readonly name: string;
  readonly limit: Derived<U>;
}

/** The least of several limits and every bound that ties for it. */
export interface Governed<U extends Unit = 'lb'> {
  readonly limit: Derived<U>;
  readonly governing: readonly Bound<U>[];
  readonly limits: readonly Bound<U>[];
}

/**
 * Which limit governs?
 *
 * @param symbol the name of the least in formulas
 * @param bounds one or more
 * @returns the least with its working, and every bound that equals it after the snap: ties are named, not hidden
 * @example governedBy('rating', [{ name: 'beam', limit: given('beam', lb(5200)) }]).governing[0].name // beam
 */
export function governedBy<U extends Unit>(symbol: string, bounds: readonly Bound<U>[]): Governed<U> {
  const least = leastOf(symbol, bounds.map(({ limit }) => limit) as readonly Derived<U>[] as Terms<U>);
  return {
    limit: least,
    limits: bounds,
    governing: bounds.filter(({ limit }) => compareFigures(limit.value, least.value) === 0),
  };
}
