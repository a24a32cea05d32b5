/** How steep is the ramp, how long must it be, and will the machine climb it? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  arcsin,
  below,
  between,
  constant,
  type Decision,
  type Derived,
  decide,
  type Guard,
  inDegrees,
  inInches,
  inPounds,
  notNegative,
  type OutsideItsRange,
  over,
  result,
  sin,
  statics,
  tan,
  times,
} from '../trace/index.js';
import { degree } from '../units/index.js';
import type { RampTooShort } from './errors.js';

export const flat = constant(degree(0));
export const upright = constant(degree(90));

/** An angle below a right angle, so that its tangent is a figure. */
export const belowUpright = (what: string, angle: Derived<'deg'>): Guard => below(what, angle, upright);

export interface RampAngle {
  readonly angle: Derived<'deg'>;
  readonly decisions: readonly Decision[];
}

/**
 * How steep does this ramp stand?
 *
 * `angle = arcsin(h / L)`; h height of the deck edge the ramp hangs on, L ramp length along its surface.
 *
 * Level ground. Makers' limits on the angle (15 degrees in mower manuals, a ramp over four times the height in a carrier
 * manual) are guidance for their machines, not part of the answer.
 *
 * @param height ground to the top of the ramp, trailer loaded as it stands
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
  if (!reaches.holds) return left({ chapter: 'load', tag: 'RampTooShort', height: h.value, length: l.value });
  return right({ angle: result('ramp angle', arcsin(over(h, l))), decisions: [...guarded.right, reaches] });
}

export interface RampLength {
  readonly length: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

/**
 * How long must the ramp be to stand no steeper than this?
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

export interface SlopeLoad {
  /** Friction the tires or tracks must find to stand on the ramp. */
  readonly grip: Derived<'ratio'>;
  /** What pulls the machine down along the ramp; what a winch must hold, without rolling resistance. */
  readonly pull: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

/**
 * What grip does the machine need on this slope, and what does it pull down the ramp with?
 *
 * Grip `mu >= tan(angle)`; pull along the ramp `P sin(angle)`.
 *
 * All wheels braked or driven and standing still; a machine driven on one axle needs more. Wet steel grips less than dry.
 *
 * @param machineWeight lb
 * @param angle of the ramp, from 0 to below 90 degrees
 * @returns a plain number and lb. Left `OutsideItsRange`
 * @example orThrow(frictionNeeded(lb(9200), degree(20))).grip // 0.364
 * @source static equilibrium, derived
 */
export function frictionNeeded(machineWeight: AnyWeight, angle: AnyAngle): Either<OutsideItsRange, SlopeLoad> {
  const load = inPounds('machine weight', machineWeight);
  const steep = inDegrees('ramp angle', angle);
  const guarded = allHold([
    notNegative('machine weight', load),
    notNegative('ramp angle', steep),
    belowUpright('ramp angle', steep),
  ]);
  if (isLeft(guarded)) return guarded;
  return right({
    grip: result('grip needed', tan(steep)),
    pull: result('pull along the ramp', times(load, sin(steep)), statics),
    decisions: guarded.right,
  });
}
