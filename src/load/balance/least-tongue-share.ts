/** How much of a gross weight the tongue must take off the axles. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Derived,
  greatestOf,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  statics,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';

/**
 * What is the least tongue share at which the axles can carry the rest?
 *
 * `least = (W - C) / W`, and not below zero; W gross weight, C what the axles carry together.
 *
 * The tongue has its own limits, checked elsewhere: coupler, hitch, truck, and the band the maker asks for.
 *
 * @param gross the whole laden trailer, or its GVWR
 * @param axles what they carry together at the ground, by GAWR, parts or tires, whichever is least
 * @returns a share of one; Left `OutsideItsRange`
 * @example leastTongueShare(lb(12000), lb(10400)) // Right 0.1333
 * @source static equilibrium, derived
 */
export function leastTongueShare(gross: AnyWeight, axles: AnyWeight): Either<OutsideItsRange, Derived<'ratio'>> {
  const [whole, carried] = [inPounds('gross weight', gross), inPounds('capacity of the axles', axles)];
  const guarded = allHold([aboveZero('gross weight', whole), aboveZero('capacity of the axles', carried)]);
  if (isLeft(guarded)) return guarded;
  const share = over(minus(whole, carried), whole);
  return right(greatestOf('least tongue share', [share, constant(ratio(0), 'none')], statics));
}
