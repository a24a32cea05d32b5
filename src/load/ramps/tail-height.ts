/** Height of the tail above sloping ground. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyLength,
  aboveZero,
  allHold,
  between,
  constant,
  type Derived,
  inDegrees,
  inInches,
  minus,
  notNegative,
  type OutsideItsRange,
  result,
  statics,
  tan,
  times,
} from '../../trace/index.js';
import { degree } from '../../units/index.js';

/**
 * How high is the tail when the ground behind the wheels rises or falls?
 *
 * `height = h - b tan(slope)`; h on level ground, b behind the middle of the last axle, slope above zero where the ground rises
 * rearward from there, as at a drive. Below zero the tail would be in the ground.
 *
 * The trailer is level; deflection of springs and tires is ignored. `departureAngle` is the slope at which the height is zero.
 *
 * @param level height of the tail on level ground, loaded
 * @param behind from the middle of the last axle to the tail
 * @param slope of the ground behind the last axle, from -45 to 45 degrees
 * @returns in; Left `OutsideItsRange`
 * @example tailHeight(inch(16), inch(81), degree(5)) // Right 8.91 in
 * @source plane geometry, derived
 */
export function tailHeight(
  level: AnyLength,
  behind: AnyLength,
  slope: AnyAngle,
): Either<OutsideItsRange, Derived<'in'>> {
  const [h, b] = [inInches('height on level ground', level), inInches('tail behind the last axle', behind)];
  const rise = inDegrees('slope of the ground', slope);
  const guarded = allHold([
    aboveZero('the height on level ground', h),
    notNegative('the tail behind the last axle', b),
    ...between('the slope of the ground', rise, constant(degree(-45)), constant(degree(45)), 'included'),
  ]);
  if (isLeft(guarded)) return guarded;
  return right(result('height of the tail', minus(h, times(b, tan(rise))), statics));
}
