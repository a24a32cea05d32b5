/** How steep is the ramp, how long must it be, and will the machine climb it? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  arcsin,
  below,
  constant,
  type Decision,
  type Derived,
  decide,
  type Guard,
  inInches,
  notNegative,
  type OutsideItsRange,
  over,
  result,
} from '../../trace/index.js';
import { degree, toWire } from '../../units/index.js';
import type { RampTooShort } from '../errors.js';

/** Level ground. */
export const flat = constant(degree(0));
/** A right angle. */
export const upright = constant(degree(90));

/** An angle below a right angle, so that its tangent is a figure. */
export const belowUpright = (what: string, angle: Derived<'deg'>): Guard => below(what, angle, upright);

/** The angle of the ramp from level. */
export interface RampAngle {
  readonly angle: Derived<'deg'>;
  readonly decisions: readonly Decision[];
}

/**
 * How steep is this ramp?
 *
 * `angle = arcsin(h / L)`; h height of the deck edge the ramp hangs on, L ramp length along its surface.
 *
 * Level ground. Makers' limits on the angle (15 degrees in mower manuals, a ramp over four times the height in a carrier
 * manual) are guidance for their machines, not part of the answer.
 *
 * @param height ground to the top of the ramp, with the trailer loaded as it is when the ramp is used
 * @param length along the surface, ground to deck edge
 * @returns deg. Left `OutsideItsRange`; `RampTooShort` when the deck is higher than the ramp is long
 * @example orThrow(rampAngle(inch(34), inch(96))).angle // 20.74 deg
 * @source plane geometry
 */
export function rampAngle(height: AnyLength, length: AnyLength): Either<RampTooShort | OutsideItsRange, RampAngle> {
  const h = inInches('deck height', height);
  const l = inInches('ramp length', length);
  const guarded = allHold([aboveZero('ramp length', l), notNegative('deck height', h)]);
  if (isLeft(guarded)) return guarded;
  const reaches = decide(h, '<=', l);
  if (!reaches.holds)
    return left({ chapter: 'load', tag: 'RampTooShort', height: toWire(h.value), length: toWire(l.value) });
  return right({ angle: result('ramp angle', arcsin(over(h, l))), decisions: [...guarded.right, reaches] });
}
