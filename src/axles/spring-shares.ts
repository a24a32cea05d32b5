/** How independent axles share a load by the rates of their springs: the one formula that groups and splits use. */
import { type Derived, over, plus, result, type Source, times } from '../trace/index.js';

export const sharing: Source = {
  id: 'sharing',
  title: 'static equilibrium of the stated suspension, derived',
  grade: 'derived',
};

/** Spring rates, their sum, and both as multiples of the first rate, so that a load is divided last and shares exactly. */
export interface SpringShares {
  readonly sum: Derived<'lb/in'>;
  readonly each: readonly Derived<'ratio'>[];
  readonly all: Derived<'ratio'>;
}

/** The shares of these rates. At least one rate, all above zero. */
export function springShares(rates: readonly [Derived<'lb/in'>, ...Derived<'lb/in'>[]]): SpringShares {
  const [first] = rates;
  const sum = result('sum of spring rates', plus(...rates));
  return { sum, each: rates.map((rate) => over(rate, first)), all: over(sum, first) };
}

/** `A k_i / sum of k`: what axle i carries of the load A. */
export const bySpring = (load: Derived<'lb'>, share: Derived<'ratio'>, { all }: SpringShares): Derived<'lb'> =>
  over(times(load, share), all);

/** `L sum of k / k_i`: what the group carries when axle i carries L. */
export const whenOneCarries = (limit: Derived<'lb'>, share: Derived<'ratio'>, { all }: SpringShares): Derived<'lb'> =>
  over(times(limit, all), share);
