/** How do the axles of one trailer share their load? Equalised axles always alike; independent ones by their springs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  type AnyLength,
  type AnyLineWeight,
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  difference,
  inInches,
  inPounds,
  inPoundsPerInch,
  minus,
  type NotAWholeCount,
  type OutsideItsRange,
  over,
  plus,
  quotient,
  result,
  statics,
  sum,
  times,
  wholeCount,
} from '../trace/index.js';
import { compare, inch, lb } from '../units/index.js';
import type { NothingGiven, SpringRatesMissing } from './errors.js';

/** Rockers or walking beams between the springs: loads stay alike whatever the attitude. */
export interface Equalised {
  readonly suspension: 'equalised';
  readonly axles: number;
}

/** Two axles on rockers with unequal arms: pivot to the front spring, pivot to the rear spring. */
export interface UnequalRockers {
  readonly suspension: 'unequal rockers';
  readonly frontArm: AnyLength;
  readonly rearArm: AnyLength;
}

/** Independent axles of one kind on a trailer that stands level: no rates needed for one or two. */
export interface IndependentLevel {
  readonly suspension: 'independent, level';
  readonly axles: number;
}

/** Independent axles with known springs, and the ball above (+) or below (-) the height at which the trailer is level. */
export interface IndependentSprung {
  readonly suspension: 'independent';
  readonly axles: readonly { readonly at: AnyLength; readonly rate: AnyLineWeight }[];
  readonly ballAboveLevel: AnyLength;
}

export type Suspension = Equalised | UnequalRockers | IndependentLevel | IndependentSprung;

export interface TandemSplit {
  /** From the front. */
  readonly loads: readonly Derived<'lb'>[];
  /** What the attitude adds to the tongue load; absent where attitude does not matter. */
  readonly tongueChange?: Derived<'lb'>;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * What does each axle of the group carry?
 *
 * Equalised: `R = A / n`. Unequal rocker arms e1, e2: `R1 = A e2/(e1 + e2)`, `R2 = A e1/(e1 + e2)`. Independent, n axles
 * at a_i behind the ball with rates k_i, ball raised by dh from level: the trailer turns by `dh sum k a / sum k a2` so that
 * moments about the ball balance, and `R_i = A k_i / sum k - k_i dh (sum k a2 - a_i sum k a) / sum k a2`; the tongue takes
 * what the axles lose. Two alike axles: about `-+ k dh s / (2 a)`, s their spacing. Ball low loads the front axle.
 *
 * Stiff frame, straight springs, all of one free height. Friction, a bound rocker and brake torque are outside, and so is
 * an axle that has left the ground: a load below zero is noted.
 *
 * @param axleLoad what the axles carry together with the trailer level, lb: scale, or `balance`
 * @param suspension rates in lb per inch of axle travel, both sides together; places in inches behind the ball
 * @returns lb. Left `NotAWholeCount`, `NothingGiven`, `OutsideItsRange`; `SpringRatesMissing` for three or more independent
 * axles without rates
 * @example orThrow(tandemSplit(lb(11000), { suspension: 'equalised', axles: 2 })).loads // 5,500 lb each
 * @source static equilibrium, derived
 */
export function tandemSplit(
  axleLoad: AnyWeight,
  suspension: Suspension,
): Either<NothingGiven | SpringRatesMissing | NotAWholeCount | OutsideItsRange, TandemSplit> {
  const load = inPounds('axle group load', axleLoad);
  switch (suspension.suspension) {
    case 'equalised':
      return alike(load, suspension.axles, [
        note('FreeRockers', 'Holds while the rockers move freely; brake torque and a bound rocker shift load.'),
      ]);
    case 'independent, level':
      return suspension.axles > 2
        ? left({ chapter: 'load', tag: 'SpringRatesMissing', axles: suspension.axles })
        : alike(load, suspension.axles, [
            note('LevelAssumed', 'Independent axles of one kind share alike only while the trailer stands level.'),
          ]);
    case 'unequal rockers':
      return byArms(load, suspension);
    case 'independent':
      return bySprings(load, suspension);
  }
}

function alike(
  load: Derived<'lb'>,
  axles: number,
  notes: readonly Note[],
): Either<NothingGiven | SpringRatesMissing | NotAWholeCount | OutsideItsRange, TandemSplit> {
  const count = wholeCount('number of axles', axles, 20);
  if (isLeft(count)) return count;
  const each = quotient('load of each axle', load, count.right, statics);
  return right({ loads: Array.from({ length: axles }, () => each), decisions: [], notes });
}

function byArms(
  load: Derived<'lb'>,
  { frontArm, rearArm }: UnequalRockers,
): Either<NothingGiven | SpringRatesMissing | NotAWholeCount | OutsideItsRange, TandemSplit> {
  const front = inInches('front rocker arm', frontArm);
  const rear = inInches('rear rocker arm', rearArm);
  const guarded = allHold([aboveZero('front rocker arm', front), aboveZero('rear rocker arm', rear)]);
  if (isLeft(guarded)) return guarded;
  const both = plus(front, rear);
  const loads = [
    result('front axle load', over(times(load, rear), both), statics),
    result('rear axle load', over(times(load, front), both), statics),
  ];
  return right({
    loads,
    decisions: guarded.right,
    notes: [note('FreeRockers', 'The longer arm has the lighter axle; holds while the rockers move freely.')],
  });
}

function bySprings(
  load: Derived<'lb'>,
  { axles, ballAboveLevel }: IndependentSprung,
): Either<NothingGiven | SpringRatesMissing | NotAWholeCount | OutsideItsRange, TandemSplit> {
  if (axles.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'axles to share the load' });
  const rise = inInches('ball above level', ballAboveLevel);
  const sprung = axles.map(({ at, rate }, i) => ({
    a: inInches(`place of axle ${i + 1}`, at),
    k: inPoundsPerInch(`spring rate of axle ${i + 1}`, rate),
  }));
  const guarded = allHold(
    sprung.flatMap(({ a, k }, i) => [
      aboveZero(`place of axle ${i + 1}`, a),
      aboveZero(`spring rate of axle ${i + 1}`, k),
    ]),
  );
  if (isLeft(guarded)) return guarded;
  const rates = sum(
    'sum of spring rates',
    sprung.map(({ k }) => k),
  );
  const first = sum(
    'sum of rate x place',
    sprung.map(({ a, k }) => times(k, a)),
  );
  const second = sum(
    'sum of rate x place x place',
    sprung.map(({ a, k }) => times(k, a, a)),
  );
  const changes = sprung.map(({ a, k }, i) => {
    const travel = result(
      `share of the rise felt at axle ${i + 1}`,
      over(minus(second, times(first, a)), second),
      statics,
    );
    return result(`unloading of axle ${i + 1}`, times(k, rise, travel));
  });
  const loads = sprung.map(({ k }, i) =>
    result(`load of axle ${i + 1}`, minus(times(load, over(k, rates)), changes[i] as Derived<'lb'>), statics),
  );
  const off = loads.filter(({ value }) => compare(value, lb(0)) < 0);
  return right({
    loads,
    tongueChange: sum('tongue load added by the attitude', changes),
    decisions: guarded.right,
    notes:
      off.length === 0
        ? []
        : [
            note(
              'AxleOffTheGround',
              'An axle would have to pull the trailer down: it has left the ground, and the figures no longer hold.',
              off,
            ),
          ],
  });
}

export interface LevelDrop {
  /** Receiver height minus coupler height: positive for a mount that drops, negative for one that rises. */
  readonly drop: Derived<'in'>;
  readonly notes: readonly Note[];
}

/**
 * How far must the ball mount drop for the trailer to ride level?
 *
 * `drop = receiver height - coupler height`; a figure below zero is a rise.
 *
 * @param receiverHeight ground to the receiver opening, tow vehicle loaded
 * @param couplerHeight ground to the coupler, trailer loaded and level
 * @returns in
 * @example levelDrop(inch(23), inch(19)).drop // 4 in
 * @source common practice, no source
 */
export function levelDrop(receiverHeight: AnyLength, couplerHeight: AnyLength): LevelDrop {
  const drop = difference(
    'drop of the ball mount',
    inInches('receiver height', receiverHeight),
    inInches('coupler height', couplerHeight),
  );
  return {
    drop,
    notes: compare(drop.value, inch(0)) < 0 ? [note('Rise', 'The mount must rise, not drop.', [drop])] : [],
  };
}
