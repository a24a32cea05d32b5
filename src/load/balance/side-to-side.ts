/** Does the load sit on the left wheels or on the right? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { NothingGiven } from '../errors.js';

/** Loads of the left and right wheels of an axle, lb. */
export interface WheelShares {
  readonly left: Derived<'lb'>;
  readonly right: Derived<'lb'>;
  readonly rightShare: Derived<'ratio'>;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * What do the left and the right wheels of this axle carry?
 *
 * `right = A (t + 2 y) / (2 t)`, that is `1/2 + y/t` of the axle load A; y how far right of the middle that load acts, t track.
 *
 * y is where the axle load acts. Coupled, the ball is in the middle and takes no roll moment: y is then the moment
 * across of the whole trailer (`lateralCentre`) over the axle load, not over the gross weight.
 *
 * Level road, at rest. With y beyond half the track one side lifts: its load is negative and a note says so.
 *
 * @param axleLoad lb: scale, or `balance`
 * @param rightOfMiddle in; negative when the load sits to the left
 * @param track middle of the left tire to middle of the right tire, in; for duals the middles of the pairs
 * @returns lb. Left `OutsideItsRange` for a track of zero
 * @example orThrow(wheelShares(lb(6000), inch(4), inch(80))).right // 3,300 lb
 * @source static equilibrium, derived
 */
export function wheelShares(
  axleLoad: AnyWeight,
  rightOfMiddle: AnyLength,
  track: AnyLength,
): Either<NothingGiven | OutsideItsRange, WheelShares> {
  const load = inPounds('axle load', axleLoad);
  const y = inInches('load right of the middle', rightOfMiddle);
  const t = inInches('track', track);
  const guarded = allHold([aboveZero('track', t)]);
  if (isLeft(guarded)) return guarded;
  const reach = plus(t, times(2, y));
  const onRight = result('load on the right wheels', over(times(load, reach), times(2, t)), statics);
  const onLeft = result('load on the left wheels', minus(load, onRight));
  const sides = [onLeft, onRight].map((side) => ({ side, lifts: decide(side, '<', constant(lb(0))) }));
  const lifted = collected(sides, ({ side, lifts }) => (lifts.holds ? [side] : []));
  return right({
    left: onLeft,
    right: onRight,
    rightShare: result('right share', over(reach, times(2, t))),
    decisions: [...guarded.right, ...sides.map(({ lifts }) => lifts)],
    notes:
      lifted.length === 0 ? [] : [note('SideLifts', 'The load stands outside the wheels: one side lifts.', lifted)],
  });
}

/** Something with a weight and a place across the trailer. */
export interface ItemAcross {
  readonly name: string;
  readonly weight: AnyWeight;
  /** Right of the middle; negative to the left. */
  readonly rightOfMiddle: AnyLength;
}

/** Total weight and where it acts across the trailer. */
export interface LateralCentre {
  readonly weight: Derived<'lb'>;
  /** Every weight times its place: what the axles hold, whatever the ball carries. */
  readonly moment: Derived<'lb*in'>;
  readonly rightOfMiddle: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

/**
 * How far off the middle is the load?
 *
 * `y = sum of (w_i y_i) / sum of w_i`.
 *
 * @param items everything on the trailer, and the trailer itself (at 0 when both sides are equal)
 * @returns in, positive to the right. Left `NothingGiven`, `OutsideItsRange` for a total of zero
 * @example orThrow(lateralCentre([{ name: 'trailer', weight: lb(3000), rightOfMiddle: inch(0) }, { name: 'bucket', weight: lb(1000), rightOfMiddle: inch(20) }])).rightOfMiddle // 5 in
 * @source static equilibrium, derived
 */
export function lateralCentre(items: readonly ItemAcross[]): Either<NothingGiven | OutsideItsRange, LateralCentre> {
  if (items.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'items across the trailer' });
  const read = items.map(({ name, weight, rightOfMiddle }) => ({
    w: inPounds(`${name} weight`, weight),
    y: inInches(`${name} right of the middle`, rightOfMiddle),
  }));
  const weight = result('weight across', plus(...read.map(({ w }) => w)));
  const guarded = allHold([aboveZero('weight across', weight)]);
  if (isLeft(guarded)) return guarded;
  const moment = result('moment across', plus(...read.map(({ w, y }) => times(w, y))));
  return right({
    weight,
    moment,
    rightOfMiddle: result('centre of gravity right of the middle', over(moment, weight), statics),
    decisions: guarded.right,
  });
}
