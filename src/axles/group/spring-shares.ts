/** How independent axles share a load by the rates of their springs: the one formula that groups and splits use. */
import { type Derived, over, plus, result, type Source, times } from '../../trace/index.js';

export const sharing: Source = Object.freeze({
  id: 'sharing',
  title: 'static equilibrium of the stated suspension, derived',
  grade: 'derived',
});

/** Spring rates, their sum, and both over the first rate, so that a load is divided last and shares exactly. */
export interface SpringShares {
  readonly sum: Derived<'lb/in'>;
  readonly each: readonly Derived<'ratio'>[];
  readonly all: Derived<'ratio'>;
}

/** The spring rate of one axle, above zero. */
export interface AxleSpring {
  readonly of: string;
  readonly rate: Derived<'lb/in'>;
}

export function springShares(springs: readonly [AxleSpring, ...AxleSpring[]]): SpringShares {
  const [first] = springs;
  const sum = result('sum of spring rates', plus(...springs.map(({ rate }) => rate)));
  return {
    sum,
    each: springs.map(({ of, rate }) => result(`relative rate of ${of}`, over(rate, first.rate))),
    all: result('sum of relative rates', over(sum, first.rate)),
  };
}

/** `A k_i / sum of k`: what axle i carries of the load A. */
export const bySpring = (load: Derived<'lb'>, share: Derived<'ratio'>, { all }: SpringShares): Derived<'lb'> =>
  over(times(load, share), all);

/** `L x sum of k / k_i`: what the group carries when axle i carries L. */
export const whenOneCarries = (limit: Derived<'lb'>, share: Derived<'ratio'>, { all }: SpringShares): Derived<'lb'> =>
  over(times(limit, all), share);
