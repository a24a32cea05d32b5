/** Are the ramps strong enough, by the basis their rating states? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, type Rating, weight } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  between,
  constant,
  type Decision,
  greatestOf,
  inPounds,
  type OutsideItsRange,
} from '../../trace/index.js';
import { lb, toWire } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { MachineAxleLoadsMissing } from '../errors.js';

/** What the machine weighs, and what each of its axles carries when that is known. */
export interface MachineOnRamps {
  readonly weight: AnyWeight;
  readonly axleLoads: readonly AnyWeight[] | 'unknown';
}

/** The load on the ramp pair against its rating. */
export interface RampCapacity {
  readonly check: Check;
  readonly decisions: readonly Decision[];
}

/**
 * Do these ramps carry this machine?
 *
 * A pair rated by axle load limits the heaviest machine axle, both ramps together; a pair rated by machine weight limits
 * the whole machine. The two are different ratings: neither is made from the other.
 *
 * @param rated the pair's rating, from its plate or sheet, with the basis that is printed there
 * @param machine weight and axle loads in lb, by scale, attachment fitted; the axle loads shift while it climbs
 * @returns the check. Left `OutsideItsRange` (an axle above the whole machine); `MachineAxleLoadsMissing` when the rating is by axle load and the axle loads are not known
 * @example orThrow(rampCapacity(rating('ramp pair, axle', lb(3500)), { weight: lb(6000), axleLoads: [lb(3600), lb(2400)] })).check.verdict // over
 * @source common practice, no source: the basis is printed with the rating
 */
export function rampCapacity(
  rated: Rating<'ramp pair, axle'> | Rating<'ramp pair, machine'>,
  machine: MachineOnRamps,
): Either<MachineAxleLoadsMissing | OutsideItsRange, RampCapacity> {
  const whole = inPounds('machine weight', machine.weight);
  const axles =
    machine.axleLoads === 'unknown'
      ? []
      : machine.axleLoads.map((load, i) => inPounds(`load of machine axle ${i + 1}`, load));
  const guarded = allHold([
    aboveZero('machine weight', whole),
    ...collected(axles, (load, i) =>
      between(`load of machine axle ${i + 1}`, load, constant(lb(0)), whole, 'included'),
    ),
  ]);
  if (isLeft(guarded)) return guarded;
  if (rated.rating === 'ramp pair, machine')
    return right({ check: checkLoad(rated, weight('machine weight', whole)), decisions: guarded.right });
  if (axles.length === 0)
    return left({ chapter: 'load', tag: 'MachineAxleLoadsMissing', machineWeight: toWire(whole.value) });
  return right({
    check: checkLoad(rated, weight('machine axle load', greatestOf('heaviest machine axle', axles))),
    decisions: guarded.right,
  });
}
