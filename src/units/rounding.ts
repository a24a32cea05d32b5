/** Rounding by name. Capacities go down, loads go up, and nothing is rounded twice: do it once, at the edge. */
import { type RoundingMode, roundToStep } from './decimal.js';
import { ofDecimal, type Quantity } from './quantity.js';
import type { Unit } from './unit-list.js';

const rounded = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>, mode: RoundingMode): Quantity<U> =>
  ofDecimal(roundToStep(q.value, step.value, mode), q.unit);

/** What may be carried: down to a multiple of `step`. @example show(roundCapacityDown(lb('10752.9'), lb(1))) // 10,752 lb */
export const roundCapacityDown = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> => rounded(q, step, 'down');

/** What must be borne: up to a multiple of `step`. @example show(roundLoadUp(lb('1631.2'), lb(1))) // 1,632 lb */
export const roundLoadUp = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> => rounded(q, step, 'up');

/** To the nearest multiple of `step`, halves away from zero: for figures that are neither capacity nor load. @example show(roundNearest(lb(1250), lb(100))) // 1,300 lb */
export const roundNearest = <U extends Unit>(q: Quantity<U>, step: Quantity<NoInfer<U>>): Quantity<U> => rounded(q, step, 'nearest');
