/** Will the machine climb the ramp, and what pulls it down? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyWeight,
  allHold,
  type Decision,
  type Derived,
  inDegrees,
  inPounds,
  notNegative,
  type OutsideItsRange,
  result,
  sin,
  statics,
  tan,
  times,
} from '../../trace/index.js';
import { belowUpright } from './angle.js';

/** What a slope asks of the machine on it. */
export interface SlopeLoad {
  /** Friction needed to hold the machine on the ramp. */
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
