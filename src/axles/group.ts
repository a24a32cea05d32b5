/** Axles that stand together and share a load. How they share it is an argument, never a default. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, type Note, note } from '../ratings/index.js';
import {
  asDerived,
  constant,
  type Decision,
  type Derived,
  decide,
  type Known,
  leastOf,
  type Name,
  over,
  plus,
  product,
  quotient,
  result,
  type Source,
  sum,
  times,
} from '../trace/index.js';
import { quantity, ratio } from '../units/index.js';
import type { AxlesError } from './errors.js';
import type { AxleSystem } from './system.js';

/** An axle system and where it stands, in inches behind the coupler. */
export interface StandingAxle {
  readonly system: AxleSystem;
  readonly at: Derived<'in'>;
  /** Spring rate of the axle, both sides together; needed for more than two independent axles. */
  readonly rate?: Known<'lb/in'> | undefined;
}

/** Equalised: rockers make the axles carry alike. Independent: each has its own springs; alike only when level and of one rate. */
export type Sharing = 'equalised' | 'independent';

export interface AxleGroup {
  readonly axles: readonly StandingAxle[];
  /** Where the load of the group acts, in inches behind the coupler. */
  readonly at: Derived<'in'>;
  /** What the group may carry, shared as assumed: limited by the axle that reaches its rating first. */
  readonly capacity: Derived<'lb'>;
  /** The same, part by part: what the group may carry by its GAWRs, its tires, its beams. */
  readonly limits: readonly Bound[];
  /** The plain sum of the axle ratings, as a label reader adds them. */
  readonly sumOfRatings: Derived<'lb'>;
  /** What the group carries, shared as assumed, when each axle may carry no more than this, by its tires as they run, say. An axle without a limit is `undefined`; one axle at least has one. */
  readonly capacityFor: (name: Name, eachAxle: readonly (Derived<'lb'> | undefined)[]) => Derived<'lb'>;
  /** The load on each axle when the group carries `load`. */
  readonly loads: (load: Derived<'lb'>) => readonly Derived<'lb'>[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const sharingSource: Source = {
  id: 'sharing',
  title: 'static equilibrium of the stated suspension, derived',
  grade: 'derived',
};

const noRate = constant(quantity(0, 'lb/in'));

type CapacityFor = AxleGroup['capacityFor'];

/** The same part of every axle, kind by kind. */
function limitsByPart(axles: readonly StandingAxle[], capacityFor: CapacityFor): readonly Bound[] {
  const bounds = axles.flatMap(({ system }) => system.governed.limits);
  const names = [...new Set(bounds.map(({ name }) => name))];
  return names.map((name) => ({
    name,
    limit: capacityFor(
      `axle group by ${name}`,
      bounds.filter((bound) => bound.name === name).map(({ limit }) => limit),
    ),
  }));
}

function alike(axles: readonly StandingAxle[], notes: readonly Note[]): AxleGroup {
  const count = constant(ratio(axles.length), undefined);
  const one = axles.length === 1;
  const ratings = axles.map(({ system }) => system.rating);
  const positions = axles.map(({ at }) => at);
  const capacityFor: CapacityFor = (name, each) =>
    one
      ? (each[0] as Derived<'lb'>)
      : product(name, leastOf(each.filter((limit) => limit !== undefined)), count, sharingSource);
  return {
    axles,
    at: one ? (positions[0] as Derived<'in'>) : result('axle group position', over(plus(...positions), count)),
    capacity: capacityFor('axle group capacity', ratings),
    limits: limitsByPart(axles, capacityFor),
    sumOfRatings: one ? (ratings[0] as Derived<'lb'>) : sum('sum of axle ratings', ratings),
    capacityFor,
    loads: (load) =>
      axles.map(({ system }) => (one ? load : quotient(`${system.label} load`, load, count, sharingSource))),
    notes,
    decisions: [],
  };
}

function byRate(
  axles: readonly StandingAxle[],
  rates: readonly Derived<'lb/in'>[],
  decisions: readonly Decision[],
): AxleGroup {
  const total = sum('sum of spring rates', rates);
  const first = rates[0] as Derived<'lb/in'>;
  const shares = rates.map((rate) => over(rate, first));
  const allShares = over(total, first);
  const moments = axles.map(({ at }, i) => times(rates[i] as Derived<'lb/in'>, at));
  /** What the group carries when one axle is full. */
  const whenFull = (limit: Derived<'lb'>, i: number): Derived<'lb'> =>
    over(times(limit, allShares), shares[i] as Derived<'ratio'>);
  const capacityFor: CapacityFor = (name, each) =>
    leastOf(
      name,
      each.flatMap((limit, i) => (limit === undefined ? [] : [whenFull(limit, i)])),
      sharingSource,
    );
  const ratings = axles.map(({ system }) => system.rating);
  return {
    axles,
    at: result('axle group position', over(plus(...moments), total)),
    capacity: capacityFor('axle group capacity', ratings),
    limits: axles.map(({ system }, i) => ({ name: system.label, limit: whenFull(system.rating, i) })),
    sumOfRatings: sum('sum of axle ratings', ratings),
    capacityFor,
    loads: (load) =>
      axles.map(({ system }, i) =>
        result(`${system.label} load`, over(times(load, shares[i] as Derived<'ratio'>), allShares), sharingSource),
      ),
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
 * Not for a bound rocker, brake torque, a trailer that does not stand level, or a lift axle.
 *
 * @param axles from the front; positions in inches behind the coupler
 * @param sharing read it off the suspension: rockers or walking beams are equalised, torsion axles are independent
 * @returns capacity in lb, its place in inches, the capacity part by part, the load on each axle; Left `NoAxles`, `SpringRateNotPositive`,
 * `SharingUnknown` for more than two independent axles without spring rates
 * @example orThrow(axleGroup([front, rear], 'equalised')).capacity // 10,400 lb for two 5,200 lb axles
 * @source static equilibrium, derived; that two 5,200 lb axles carry 10,400 lb: common practice, no source
 */
export function axleGroup(axles: readonly StandingAxle[], sharing: Sharing): Either<AxlesError, AxleGroup> {
  if (axles.length === 0) return left({ chapter: 'axles', tag: 'NoAxles' });
  if (axles.length === 1 || sharing === 'equalised') return right(alike(axles, []));
  const rates = axles.flatMap(({ rate, system }) =>
    rate === undefined ? [] : [asDerived(`${system.label} spring rate`, rate)],
  );
  const above = rates.map((rate) => decide(rate, '>', noRate));
  const flat = above.findIndex(({ holds }) => !holds);
  if (flat >= 0)
    return left({
      chapter: 'axles',
      tag: 'SpringRateNotPositive',
      of: axles.filter(({ rate }) => rate !== undefined)[flat]?.system.label ?? 'an axle',
      rate: (rates[flat] as Derived<'lb/in'>).value,
    });
  if (rates.length === axles.length) return right(byRate(axles, rates, above));
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
