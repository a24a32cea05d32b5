/** The torque that the brake of one wheel must give. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyShare,
  type AnyWeight,
  aboveZero,
  allHold,
  asDerived,
  asForce,
  constant,
  type Derived,
  inInches,
  inPounds,
  inUnit,
  type Known,
  type OutsideItsRange,
  over,
  result,
  type Source,
  statics,
  times,
} from '../../trace/index.js';
import { gravity, ratio, type UnitOf } from '../../units/index.js';
import type { HardwareError } from './hardware-errors.js';
import { allPositive } from './hardware-guards.js';

const oneG = constant(gravity(1), 'standard gravity');
const newton: Source = { id: 'newton', title: 'force is mass times acceleration, derived', grade: 'derived' };

/**
 * What torque must the brake of one wheel give to slow this weight so?
 *
 * `T = W (a / g) r / n`. W weight that these brakes must slow, a deceleration in g, r rolling radius of the tire, n braked wheels.
 *
 * All wheels alike; no slip, no slope, no fade. The maker's rating of the brake governs.
 *
 * @param weight lb
 * @param slowing deceleration wanted, such as `gravity('0.435')`
 * @param radius of the tire as it rolls, in
 * @param wheels that are braked
 * @returns lbf*in for one wheel; Left `OutsideItsRange`
 * @example brakeTorquePerWheel(lb(12000), gravity('0.4'), inch(15), 4) // Right 18,000 lbf*in
 * @source force is mass times acceleration, derived
 */
export function brakeTorquePerWheel(
  weight: AnyWeight,
  slowing: Known<UnitOf<'acceleration'>>,
  radius: AnyLength,
  wheels: number,
): Either<OutsideItsRange, Derived<'lbf*in'>> {
  const load = inPounds('weight to be slowed', weight);
  const a = inUnit(asDerived('deceleration', slowing), 'g');
  const r = inInches('rolling radius', radius);
  const n = constant(ratio(wheels), 'braked wheels');
  const guarded = allHold([
    aboveZero('the weight to be slowed', load),
    aboveZero('the deceleration', a),
    aboveZero('the rolling radius', r),
    aboveZero('the number of braked wheels', n),
  ]);
  if (isLeft(guarded)) return guarded;
  return right(result('brake torque of a wheel', over(times(times(asForce(load), over(a, oneG)), r), n), newton));
}

/** What the brakes are to do: which weight, at which share of it, with how many brakes at which rolling radius. */
export interface BrakeTorqueQuestion {
  readonly braked: AnyWeight;
  /** Braking force over weight: `percent('43.5')`. */
  readonly share: AnyShare;
  readonly brakes: number;
  readonly loadedRadius: AnyLength;
}

/**
 * Which torque must each brake give to hold back this share of the weight?
 *
 * `torque = W share r / n`. W braked weight, lb; r loaded radius of the tire, in; n brakes that work alike.
 *
 * Not for wheels that lock or brakes of unequal size.
 *
 * @returns lbf ft for one brake; Left `HardwareNotAboveZero`
 * @example brakeTorque({ braked: lb(14000), share: percent('43.5'), brakes: 4, loadedRadius: inch('15.3') }) // Right 1,941 lbf*ft
 * @source static equilibrium, derived
 */
export function brakeTorque(question: BrakeTorqueQuestion): Either<HardwareError, Derived<'lbf*ft'>> {
  const braked = inPounds('braked weight', question.braked);
  const share = inUnit(asDerived('braking share', question.share), 'ratio');
  const count = constant(ratio(Number.isFinite(question.brakes) ? question.brakes : 0), 'number of brakes');
  const radius = inUnit(asDerived('loaded radius', question.loadedRadius), 'in');
  const positive = allPositive([
    ['braked weight', braked],
    ['braking share', share],
    ['number of brakes', count],
    ['loaded radius', radius],
  ]);
  if (isLeft(positive)) return positive;
  const force = result('braking force', times(asForce(braked), share));
  return right(result('torque of one brake', inUnit(over(times(force, radius), count), 'lbf*ft'), statics));
}
