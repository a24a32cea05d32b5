/** The torque that the brake of one wheel must give. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
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
  times,
} from '../../trace/index.js';
import { gravity, ratio, type UnitOf } from '../../units/index.js';

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
