/** How heavy the trailer is for what tows it. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  commonPractice,
  type Derived,
  inPounds,
  type OutsideItsRange,
  over,
  result,
} from '../../trace/index.js';

/**
 * How heavy is the trailer for its tow vehicle?
 *
 * `ratio = trailer gross / tow vehicle as loaded`. An index to compare combinations with.
 *
 * No limit: the ratings of the tow vehicle govern, whatever the ratio is.
 *
 * @param trailerGross the whole laden trailer, tongue load included
 * @param towVehicle the truck unhitched, people and cargo aboard, as scaled
 * @returns a plain number; Left `OutsideItsRange`
 * @example trailerToVehicleRatio(lb(12650), lb(8800)) // Right 1.4375
 * @source common practice, no source
 */
export function trailerToVehicleRatio(
  trailerGross: AnyWeight,
  towVehicle: AnyWeight,
): Either<OutsideItsRange, Derived<'ratio'>> {
  const [trailer, truck] = [inPounds('trailer gross', trailerGross), inPounds('tow vehicle', towVehicle)];
  const guarded = allHold([aboveZero('the trailer gross', trailer), aboveZero('the tow vehicle', truck)]);
  return isLeft(guarded) ? guarded : right(result('trailer to vehicle', over(trailer, truck), commonPractice));
}
