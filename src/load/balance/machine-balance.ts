/** Where does this machine balance? Two scale readings, one under each axle, say it better than any brochure. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  inInches,
  inPounds,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';

/** Weight and balance point of a wheeled machine, from its two axle readings. */
export interface MachineBalance {
  readonly weight: Derived<'lb'>;
  readonly behindFrontAxle: Derived<'in'>;
  /** Behind the machine's front face, as `placementWindow` asks it. */
  readonly balancePoint: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

/**
 * Where is the balance point of this wheeled machine?
 *
 * `rear reading x wheelbase / (front reading + rear reading)` behind the front axle, plus the distance from the machine's
 * front face to that axle.
 *
 * Weighed level, with the attachment and the fluids that travel. A raised boom or bucket moves it.
 *
 * @param machine front and rear axle on the scale, lb; wheelbase and front face to front axle, in
 * @returns lb and in. Left `OutsideItsRange`
 * @example orThrow(machineBalance({ frontAxle: lb(3600), rearAxle: lb(2400), wheelbase: inch(50), frontFaceToAxle: inch(30) })).balancePoint // 50 in
 * @source static equilibrium, derived
 */
export function machineBalance(machine: {
  readonly frontAxle: AnyWeight;
  readonly rearAxle: AnyWeight;
  readonly wheelbase: AnyLength;
  readonly frontFaceToAxle: AnyLength;
}): Either<OutsideItsRange, MachineBalance> {
  const front = inPounds('machine front axle', machine.frontAxle);
  const rear = inPounds('machine rear axle', machine.rearAxle);
  const base = inInches('machine wheelbase', machine.wheelbase);
  const face = inInches('front face to front axle', machine.frontFaceToAxle);
  const weight = result('machine weight', plus(front, rear));
  const guarded = allHold([
    notNegative('machine front axle', front),
    notNegative('machine rear axle', rear),
    aboveZero('machine weight', weight),
    aboveZero('machine wheelbase', base),
    notNegative('front face to front axle', face),
  ]);
  if (isLeft(guarded)) return guarded;
  const behindFrontAxle = result('balance point behind the front axle', over(times(rear, base), weight), statics);
  return right({
    weight,
    behindFrontAxle,
    balancePoint: result('balance point behind machine front', plus(face, behindFrontAxle)),
    decisions: guarded.right,
  });
}
