/** Does the machine on the ramps lift the tongue, and what must hold it? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
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
  greatestOf,
  inInches,
  inPounds,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
  zeroIn,
} from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';
import { type HoldingTruck, holdOf } from './truck-hold.js';

/** All in lb and in; places behind the coupler. */
export interface TailLoading {
  /** Tongue load before this machine comes on: of the trailer and all that lies on it. */
  readonly tongue: AnyWeight;
  readonly axlesAt: AnyLength;
  /** The deck's rear edge, where the machine comes on. */
  readonly deckRear: AnyLength;
  readonly machineWeight: AnyWeight;
  /** `unknown`: coupled, or to be, to a tow vehicle of which too little is known. */
  readonly truck: HoldingTruck | 'not coupled' | 'unknown';
}

/** Load at the ball with the machine on the deck edge, and what holds the ball down. */
export interface TailLift {
  /** Load at the ball with the machine's weight on the deck edge; below zero it pulls the ball up. */
  readonly ball: Derived<'lb'>;
  /** Uplift at the ball at which the first truck axle reaches zero load, lb; zero when not coupled, absent when the truck is not known. */
  readonly truckHolds?: Derived<'lb'>;
  /** What rear legs must take so that the ball is never pulled up. */
  readonly legs: Derived<'lb'>;
  /** For an unknown truck only `pulls the ball up` is given: what it can hold down is unknown. */
  readonly verdict:
    | 'presses on the ball'
    | 'held by the truck'
    | 'lifts the truck'
    | 'lifts the tongue'
    | 'pulls the ball up';
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/** An uplift at the ball is compared with the uplift that the truck withstands. */
function verdictOf(
  ball: Derived<'lb'>,
  hold: Derived<'lb'> | undefined,
  truck: TailLoading['truck'],
): Pick<TailLift, 'verdict' | 'decisions'> {
  const presses = decide(ball, '>=', zeroIn('lb'));
  if (presses.holds) return { verdict: 'presses on the ball', decisions: [presses] };
  if (hold === undefined) return { verdict: 'pulls the ball up', decisions: [presses] };
  if (truck === 'not coupled') return { verdict: 'lifts the tongue', decisions: [presses] };
  const holds = decide(result('load left to hold the ball down', plus(ball, hold)), '>=', zeroIn('lb'));
  return { verdict: holds.holds ? 'held by the truck' : 'lifts the truck', decisions: [presses, holds] };
}

/**
 * Does the tongue lift while the machine drives up the ramps?
 *
 * With the whole machine weight P on the deck edge xe: `T = T0 - P (xe - a)/a`. The truck holds down `D (b / (b + o))`, D
 * its rear axle alone, b wheelbase, o overhang: with that pull its rear axle carries nothing. A gooseneck (o below zero)
 * holds down the lesser of that and `F b / -o`, F the front axle alone. Rear legs that leave the ball unloaded and no more
 * take `P - T0 a/(xe - a)`, at least zero.
 *
 * The whole machine on the edge is the worst moment and a little more than comes: part of it still rests on the ground.
 * A coupler latch is not a lifting device.
 *
 * @param loading weights by scale, places by tape
 * @returns lb. Left `OutsideItsRange`. A lifted truck or tongue is an answer
 * @example orThrow(tailLift({ tongue: lb(480), axlesAt: inch(190), deckRear: inch(298), machineWeight: lb(9200), truck: 'not coupled' })).ball // -4,749.47 lb
 * @source static equilibrium, derived
 */
export function tailLift(loading: TailLoading): Either<OutsideItsRange, TailLift> {
  const tongue = inPounds('tongue load before loading', loading.tongue);
  const a = inInches('coupler to axles', loading.axlesAt);
  const edge = inInches('deck rear', loading.deckRear);
  const load = inPounds('machine weight', loading.machineWeight);
  const guarded = allHold([aboveZero('coupler to axles', a), notNegative('machine weight', load)]);
  if (isLeft(guarded)) return guarded;
  const held = holdOf(loading.truck);
  if (isLeft(held)) return held;
  const behind = result('deck edge behind the axles', minus(edge, a));
  const ball = result('load at the ball', minus(tongue, over(times(load, behind), a)), statics);
  const overhangs = decide(behind, '>', constant(inch(0)));
  const legs = overhangs.holds
    ? greatestOf('load on the rear legs', [constant(lb(0)), minus(load, over(times(tongue, a), behind))], statics)
    : constant(lb(0));
  const { hold } = held.right;
  const { verdict, decisions } = verdictOf(ball, hold, loading.truck);
  return right({
    ball,
    ...(hold && { truckHolds: hold }),
    legs,
    verdict,
    decisions: [...guarded.right, ...held.right.decisions, overhangs, ...decisions],
    notes: [
      ...held.right.notes,
      note('Chock', 'Stay coupled and chock the trailer wheels before anything climbs the ramps.'),
      ...(verdict === 'presses on the ball'
        ? []
        : [
            note(
              'BallPulledUp',
              'The ball is pulled up while loading: set the rear legs; the latch is no lifting part.',
              [ball, legs],
            ),
          ]),
    ],
  });
}
