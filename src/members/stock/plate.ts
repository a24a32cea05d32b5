/** Flat steel and everything else that is weighed by the square foot. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyDensity,
  type AnyLength,
  aboveZero,
  allHold,
  type Derived,
  inInches,
  inPoundsPerCubicFoot,
  inUnit,
  result,
  times,
} from '../../trace/index.js';
import type { MembersError } from '../errors.js';

/**
 * What does a sheet or plate of this thickness weigh per square foot?
 *
 * `w = t x density`, t in ft, density in lb/ft3: 40.83 lb/ft2 per inch of steel at 490.
 *
 * For flat plate, rubber mat, aluminium sheet. Not for a raised pattern (`floorPlateWeight`), an expanded mesh, or a gauge number.
 *
 * @param thickness by micrometer or as ordered, any unit of length
 * @param density `steelDensity`, `steelDensityByPlate`, `aluminiumDensity`, or the maker's figure (rubber mats differ widely)
 * @returns lb/ft2; Left `OutsideItsRange`
 * @example plateWeight(inch('0.25'), steelDensity) // Right 10.2083 lb/ft2
 * @source Iowa DOT IM 569 for 490 lb/ft3
 */
export function plateWeight(thickness: AnyLength, density: AnyDensity): Either<MembersError, Derived<'lb/ft2'>> {
  const inches = inInches('thickness', thickness);
  const perCubicFoot = inPoundsPerCubicFoot('density', density);
  const tested = allHold([aboveZero('thickness', inches), aboveZero('density', perCubicFoot)]);
  return isLeft(tested) ? tested : right(result('weight per square foot', times(perCubicFoot, inUnit(inches, 'ft'))));
}
