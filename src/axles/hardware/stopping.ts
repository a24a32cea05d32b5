/** Deceleration and the length of a stop, brakes only. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  asDerived,
  asForce,
  constant,
  type Derived,
  inPounds,
  inUnit,
  type Known,
  over,
  result,
  type Source,
  times,
} from '../../trace/index.js';
import { gravity, type UnitOf } from '../../units/index.js';
import type { HardwareError } from './hardware-errors.js';
import { allPositive } from './hardware-guards.js';

const kinematics: Source = Object.freeze({
  id: 'kinematics',
  title: 'uniform deceleration, derived',
  grade: 'derived',
});

/**
 * How hard does this braking force slow this weight?
 *
 * `deceleration = F / W x g`. F force of all brakes at the road, lbf; W everything that must be stopped, lb.
 *
 * @returns ft/s2; Left `HardwareNotAboveZero`
 * @example deceleration(lbf(5100), lb(20500)) // Right 8 ft/s2; that is 0.249 g
 * @source uniform deceleration, derived
 */
export function deceleration(
  force: Known<UnitOf<'force'>>,
  weight: AnyWeight,
): Either<HardwareError, Derived<'ft/s2'>> {
  const [held, moved] = [inUnit(asDerived('braking force', force), 'lbf'), inPounds('weight to be stopped', weight)];
  const positive = allPositive([
    ['braking force', held],
    ['weight to be stopped', moved],
  ]);
  if (isLeft(positive)) return positive;
  const standard = inUnit(constant(gravity(1), 'standard gravity'), 'ft/s2');
  return right(result('deceleration', times(over(held, asForce(moved)), standard), kinematics));
}

/**
 * How long is the stop at this deceleration?
 *
 * `d = v^2 / (2 a)`. v speed, ft/s; a steady deceleration, ft/s2. Brakes only: the way rolled before they bite is not in it.
 *
 * An index to compare brakes with, not a promise: no fade, no hill, no wet road, no time to react.
 *
 * @returns ft; Left `HardwareNotAboveZero`
 * @example stoppingDistance(mph(60), gravity('0.6')) // Right 200.6 ft
 * @source uniform deceleration, derived
 */
export function stoppingDistance(
  speed: Known<UnitOf<'speed'>>,
  slowing: Known<UnitOf<'acceleration'>>,
): Either<HardwareError, Derived<'ft'>> {
  const [v, a] = [inUnit(asDerived('speed', speed), 'ft/s'), inUnit(asDerived('deceleration', slowing), 'ft/s2')];
  const positive = allPositive([
    ['speed', v],
    ['deceleration', a],
  ]);
  if (isLeft(positive)) return positive;
  return right(result('stopping distance', over(times(v, v), times(2, a)), kinematics));
}
