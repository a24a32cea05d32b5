/** What each axle of a group carries, and what the group carries under limits of its axles. */
import { type AnyLineWeight, type Derived, leastOf, over, result, times } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { AxleSystem } from '../axle-parts.js';
import { bySpring, type SpringShares, sharing, whenOneCarries } from './spring-shares.js';

/** An axle system and its distance behind the coupler, in. */
export interface StandingAxle {
  readonly system: AxleSystem;
  readonly at: Derived<'in'>;
  /** Spring rate of the axle, both sides together; needed for more than two independent axles. */
  readonly rate?: AnyLineWeight | undefined;
}

/** Axles and how they share a load. */
export interface SharedAxles {
  readonly axles: readonly StandingAxle[];
  /** The springs by which the axles share; absent when they carry alike. */
  readonly springs?: SpringShares | undefined;
}

/**
 * What does each axle carry when the group carries this load?
 *
 * Alike `A / n`; by springs `A k_i / sum of k`; A the load in lb, n the number of axles, k spring rates in lb/in.
 *
 * Holds as the group itself does: level, rockers free.
 *
 * @param group from `axleGroup`
 * @param load what the axles carry together, lb
 * @returns lb, from the front
 * @example axleLoads(orThrow(axleGroup([front, rear], 'equalised')), given('load', lb(9000))) // 4,500 lb
 * @source static equilibrium, derived
 */
export function axleLoads({ axles, springs }: SharedAxles, load: Derived<'lb'>): readonly Derived<'lb'>[] {
  if (axles.length === 1) return [load];
  const share = (i: number): Derived<'lb'> =>
    springs === undefined ? over(load, axles.length) : bySpring(load, springs.each[i] as Derived<'ratio'>, springs);
  return axles.map(({ system }, i) => result(`${system.label} load`, share(i), sharing));
}

/**
 * What may the group carry when each axle may carry no more than this?
 *
 * Alike `n x least limit`; by springs the least of `L_i sum of k / k_i`; L limits in lb, k spring rates in lb/in.
 *
 * @param group from `axleGroup`
 * @param name what the limit is called in formulas
 * @param limits one an axle from the front, lb; `undefined` for an axle without a limit, at least one has one
 * @returns lb
 * @example groupCapacity(orThrow(axleGroup([front, rear], 'equalised')), 'by tires', [given('front tires', lb(5000)), undefined]) // 10,000 lb
 * @source static equilibrium, derived
 */
export function groupCapacity(
  { axles, springs }: SharedAxles,
  name: string,
  limits: readonly (Derived<'lb'> | undefined)[],
): Derived<'lb'> {
  if (axles.length === 1) return limits[0] as Derived<'lb'>;
  if (springs === undefined) {
    const least = leastOf(limits.filter((limit) => limit !== undefined));
    return result(name, times(least, axles.length), sharing);
  }
  const whenFull = collected(limits, (limit, i) =>
    limit === undefined ? [] : [whenOneCarries(limit, springs.each[i] as Derived<'ratio'>, springs)],
  );
  return leastOf(name, whenFull, sharing);
}
