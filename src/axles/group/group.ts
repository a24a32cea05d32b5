/** A group of axles that share a load. How they share it is an argument, never a default. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, type Note, note } from '../../ratings/index.js';
import {
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  inPoundsPerInch,
  type OutsideItsRange,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { NoAxles, SharingUnknown } from '../errors.js';
import { groupCapacity, type SharedAxles, type StandingAxle } from './group-loads.js';
import { type AxleSpring, springShares, whenOneCarries } from './spring-shares.js';

/** Equalised: rockers make the axles carry alike. Independent: each has its own springs; alike only when level and of one rate. */
export type Sharing = 'equalised' | 'independent';

export interface AxleGroup extends SharedAxles {
  /** Where the load of the group acts, in inches behind the coupler. */
  readonly at: Derived<'in'>;
  /** What the group may carry, shared as assumed: limited by the axle that reaches its rating first. */
  readonly capacity: Derived<'lb'>;
  /** The same, part by part: what the group may carry by its GAWRs, its tires, its beams. */
  readonly limits: readonly Bound[];
  /** The plain sum of the axle ratings, as a label reader adds them. */
  readonly sumOfRatings: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/** The same part of every axle, kind by kind. */
function limitsByPart(group: SharedAxles): readonly Bound[] {
  const bounds = collected(group.axles, ({ system }) => system.governed.limits);
  const parts = bounds.filter(({ name }, i) => bounds.findIndex((bound) => bound.name === name) === i);
  return parts.map(({ name }) => {
    const limits = bounds.filter((bound) => bound.name === name).map(({ limit }) => limit);
    return { name, limit: groupCapacity(group, `axle group by ${name}`, limits) };
  });
}

function alike(axles: readonly StandingAxle[], notes: readonly Note[]): AxleGroup {
  const [ratings, places] = [axles.map(({ system }) => system.rating), axles.map(({ at }) => at)];
  const one = axles.length === 1;
  const shared = { axles, springs: undefined };
  return {
    axles,
    springs: undefined,
    at: one ? (places[0] as Derived<'in'>) : result('axle group position', over(plus(...places), axles.length)),
    capacity: groupCapacity(shared, 'axle group capacity', ratings),
    limits: limitsByPart(shared),
    sumOfRatings: one ? (ratings[0] as Derived<'lb'>) : result('sum of axle ratings', plus(...ratings)),
    notes,
    decisions: [],
  };
}

function byRate(
  axles: readonly StandingAxle[],
  rates: readonly [AxleSpring, ...AxleSpring[]],
  decisions: readonly Decision[],
): AxleGroup {
  const springs = springShares(rates);
  const moments = axles.map(({ at }, i) => times((rates[i] as AxleSpring).rate, at));
  const ratings = axles.map(({ system }) => system.rating);
  const full = (rating: Derived<'lb'>, i: number): Derived<'lb'> =>
    whenOneCarries(rating, springs.each[i] as Derived<'ratio'>, springs);
  return {
    axles,
    springs,
    at: result('axle group position', over(plus(...moments), springs.sum)),
    capacity: groupCapacity({ axles, springs }, 'axle group capacity', ratings),
    limits: axles.map(({ system }, i) => ({ name: system.label, limit: full(system.rating, i) })),
    sumOfRatings: result('sum of axle ratings', plus(...ratings)),
    notes: [note('SharedByRate', 'Independent axles share by their spring rates, the trailer standing level.')],
    decisions,
  };
}

/**
 * What do these axles carry together, and where does their load act?
 *
 * Alike: `capacity = count x least axle rating`, each axle carries `load / count`, acting at the mean position.
 * By rate (independent, level): axle i carries `load x k_i / sum k`.
 *
 * Not for a bound rocker, brake torque, a trailer that is not level, or a lift axle.
 *
 * @param axles from the front; positions in inches behind the coupler
 * @param sharing read it off the suspension: rockers or walking beams are equalised, torsion axles are independent
 * @returns capacity in lb, its place in inches, the capacity part by part; Left `NoAxles`, `OutsideItsRange` for a spring rate of
 * zero or less, `SharingUnknown` for more than two independent axles without spring rates
 * @example orThrow(axleGroup([front, rear], 'equalised')).capacity // 10,400 lb for two 5,200 lb axles
 * @source static equilibrium, derived; that two 5,200 lb axles carry 10,400 lb: common practice, no source
 */
export function axleGroup(
  axles: readonly StandingAxle[],
  sharing: Sharing,
): Either<NoAxles | SharingUnknown | OutsideItsRange, AxleGroup> {
  if (axles.length === 0) return left({ chapter: 'axles', tag: 'NoAxles' });
  if (axles.length === 1 || sharing === 'equalised') return right(alike(axles, []));
  const springs = collected(axles, ({ rate, system: { label } }) =>
    rate === undefined ? [] : [{ of: label, rate: inPoundsPerInch(`${label} spring rate`, rate) }],
  );
  const guarded = allHold(springs.map(({ of, rate }) => aboveZero(`${of} spring rate`, rate)));
  if (isLeft(guarded)) return guarded;
  const [first, ...others] = springs;
  if (first !== undefined && springs.length === axles.length)
    return right(byRate(axles, [first, ...others], guarded.right));
  if (axles.length > 2) return left({ chapter: 'axles', tag: 'SharingUnknown', axles: axles.length });
  return right(
    alike(axles, [
      note(
        'LevelAssumed',
        'Two independent axles share alike only when they are of one kind and the trailer stands level.',
      ),
    ]),
  );
}
