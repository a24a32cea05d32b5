/** How steep a drive may be before the tail touches. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  arctan,
  type Derived,
  inInches,
  type OutsideItsRange,
  over,
  result,
  statics,
} from '../../trace/index.js';

/**
 * How steep may a drive be before the tail touches?
 *
 * `angle = arctan(height / behind)`, from the foot of the last tire to the lowest point of the tail.
 *
 * A little less than the truth, on the safe side: the line that just clears the tail touches the tire behind that point. Springs and
 * tires that give are not in it.
 *
 * @param height of the lowest point of the tail above the ground, loaded
 * @param behind from the middle of the last axle to that point
 * @returns degrees; Left `OutsideItsRange`
 * @example departureAngle(inch(16), inch(81)) // Right 11.17 deg
 * @source plane geometry, derived
 */
export function departureAngle(height: AnyLength, behind: AnyLength): Either<OutsideItsRange, Derived<'deg'>> {
  const [h, b] = [inInches('height of the tail', height), inInches('tail behind the last axle', behind)];
  const guarded = allHold([aboveZero('the height of the tail', h), aboveZero('the tail behind the last axle', b)]);
  return isLeft(guarded) ? guarded : right(result('departure angle', arctan(over(h, b)), statics));
}
