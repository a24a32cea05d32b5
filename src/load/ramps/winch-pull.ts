/** What a winch must pull to bring a machine up the ramps. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyShare,
  type AnyWeight,
  aboveZero,
  allHold,
  asForce,
  cos,
  type Derived,
  inDegrees,
  inPounds,
  inShare,
  notNegative,
  type OutsideItsRange,
  plus,
  result,
  sin,
  statics,
  times,
} from '../../trace/index.js';
import { belowUpright } from './angle.js';

/**
 * What must the winch pull to bring this machine up the ramp?
 *
 * `F = W sin(angle) + c W cos(angle)`. W weight, c rolling resistance as a share of the weight on the ramp.
 *
 * Steady pull in line with the ramp; no jerk, no wheels that drag. A winch is rated on its first layer of rope: each further layer
 * pulls less, and the rating of the maker governs.
 *
 * @param machineWeight lb
 * @param angle of the ramp, from 0 to below 90 degrees
 * @param rolling resistance: what the machine rolls on decides; measure it, or take the maker's figure
 * @returns lbf; Left `OutsideItsRange`
 * @example winchPull(lb(4000), degree(15), ratio('0.1')) // Right 1,421.65 lbf
 * @source static equilibrium, derived
 */
export function winchPull(
  machineWeight: AnyWeight,
  angle: AnyAngle,
  rolling: AnyShare,
): Either<OutsideItsRange, Derived<'lbf'>> {
  const weight = inPounds('machine weight', machineWeight);
  const [steep, share] = [inDegrees('ramp angle', angle), inShare('rolling resistance', rolling)];
  const guarded = allHold([
    aboveZero('the machine weight', weight),
    notNegative('the ramp angle', steep),
    belowUpright('the ramp angle', steep),
    notNegative('the rolling resistance', share),
  ]);
  if (isLeft(guarded)) return guarded;
  const pull = times(weight, plus(sin(steep), times(share, cos(steep))));
  return right(result('pull of the winch', asForce(pull), statics));
}
