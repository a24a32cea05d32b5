/** How long must the ramp be? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyLength,
  aboveZero,
  allHold,
  between,
  type Decision,
  type Derived,
  inDegrees,
  inInches,
  notNegative,
  type OutsideItsRange,
  over,
  result,
  sin,
} from '../../trace/index.js';
import { flat, upright } from './angle.js';

/** The length of the ramp along its surface. */
export interface RampLength {
  readonly length: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

/**
 * How long must the ramp be to be no steeper than this?
 *
 * `L = h / sin(angle)`, along the surface. Not rounded: a shop rounds up.
 *
 * @param height ground to the top of the ramp
 * @param angle the steepest one wants, above 0 and at most 90 degrees: from the machine's manual
 * @returns in. Left `OutsideItsRange`
 * @example orThrow(rampLength(inch(34), degree(15))).length // 131.37 in
 * @source plane geometry
 */
export function rampLength(height: AnyLength, angle: AnyAngle): Either<OutsideItsRange, RampLength> {
  const h = inInches('deck height', height);
  const steep = inDegrees('ramp angle', angle);
  const guarded = allHold([
    notNegative('deck height', h),
    aboveZero('ramp angle', steep),
    ...between('ramp angle', steep, flat, upright, 'included'),
  ]);
  if (isLeft(guarded)) return guarded;
  return right({ length: result('ramp length', over(h, sin(steep))), decisions: guarded.right });
}
