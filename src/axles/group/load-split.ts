/** How do the axles of one trailer share their load? Equalised axles always alike; independent ones by their springs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  inPoundsPerInch,
  minus,
  type NotAWholeCount,
  type OutsideItsRange,
  over,
  plus,
  result,
  times,
  wholeCount,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { NoAxles, SharingUnknown } from '../errors.js';
import { bySpring, sharing, springShares } from './spring-shares.js';
import type { IndependentSprung, Suspension, UnequalRockers } from './suspension.js';

export interface TandemSplit {
  /** From the front. */
  readonly loads: readonly Derived<'lb'>[];
  /** What the attitude adds to the tongue load; absent where attitude does not matter. */
  readonly tongueChange?: Derived<'lb'>;
  /** What the attitude takes off each axle, whatever the load; absent where attitude does not matter. */
  readonly unloading?: readonly Derived<'lb'>[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/** The split of a load over independent axles, or why there is none. */
export type Split = Either<NoAxles | SharingUnknown | NotAWholeCount | OutsideItsRange, TandemSplit>;

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
 * @returns lb. Left `NotAWholeCount`, `NoAxles`, `OutsideItsRange`; `SharingUnknown` for three or more independent
 * axles without rates
 * @example orThrow(tandemSplit(lb(11000), { suspension: 'equalised', axles: 2 })).loads // 5,500 lb each
 * @source static equilibrium, derived
 */
export function tandemSplit(axleLoad: AnyWeight, suspension: Suspension): Split {
  const load = inPounds('axle group load', axleLoad);
  switch (suspension.suspension) {
    case 'equalised':
      return alike(load, suspension.axles, [
        note('FreeRockers', 'Holds while the rockers move freely; brake torque and a bound rocker shift load.'),
      ]);
    case 'independent, level':
      return suspension.axles > 2
        ? left({ chapter: 'axles', tag: 'SharingUnknown', axles: suspension.axles })
        : alike(load, suspension.axles, [
            note('LevelAssumed', 'Independent axles of one kind share alike only while the trailer stands level.'),
          ]);
    case 'unequal rockers':
      return byArms(load, suspension);
    case 'independent':
      return bySprings(load, suspension);
  }
}

function alike(load: Derived<'lb'>, axles: number, notes: readonly Note[]): Split {
  const count = wholeCount('number of axles', axles, 20);
  if (isLeft(count)) return count;
  const each = result('load of each axle', over(load, count.right), sharing);
  return right({ loads: Array.from({ length: axles }, () => each), decisions: [], notes });
}

function byArms(load: Derived<'lb'>, { frontArm, rearArm }: UnequalRockers): Split {
  const front = inInches('front rocker arm', frontArm);
  const rear = inInches('rear rocker arm', rearArm);
  const guarded = allHold([aboveZero('front rocker arm', front), aboveZero('rear rocker arm', rear)]);
  if (isLeft(guarded)) return guarded;
  const loads = [
    result('front axle load', over(times(load, rear), plus(front, rear)), sharing),
    result('rear axle load', over(times(load, front), plus(front, rear)), sharing),
  ];
  return right({
    loads,
    decisions: guarded.right,
    notes: [note('FreeRockers', 'The longer arm has the lighter axle; holds while the rockers move freely.')],
  });
}

function bySprings(load: Derived<'lb'>, { axles, ballAboveLevel }: IndependentSprung): Split {
  const rise = inInches('ball above level', ballAboveLevel);
  const sprung = axles.map(({ at, rate }, i) => ({
    a: inInches(`place of axle ${i + 1}`, at),
    of: `axle ${i + 1}`,
    rate: inPoundsPerInch(`spring rate of axle ${i + 1}`, rate),
  }));
  const [first, ...others] = sprung;
  if (first === undefined) return left({ chapter: 'axles', tag: 'NoAxles' });
  const guarded = allHold(
    collected(sprung, ({ a, of, rate }) => [aboveZero(`place of ${of}`, a), aboveZero(`spring rate of ${of}`, rate)]),
  );
  if (isLeft(guarded)) return guarded;
  const springs = springShares([first, ...others]);
  const ka = result('sum of rate x place', plus(...sprung.map(({ a, rate }) => times(rate, a))));
  const kaa = result('sum of rate x place x place', plus(...sprung.map(({ a, rate }) => times(rate, a, a))));
  const changes = sprung.map(({ a, of, rate }) => {
    const felt = result(`share of the rise felt at ${of}`, over(minus(kaa, times(ka, a)), kaa), sharing);
    return result(`unloading of ${of}`, times(rate, rise, felt));
  });
  const loads = changes.map((change, i) =>
    result(
      `load of axle ${i + 1}`,
      minus(bySpring(load, springs.each[i] as Derived<'ratio'>, springs), change),
      sharing,
    ),
  );
  const lifts = loads.map((axle) => decide(axle, '<', constant(lb(0))));
  const off = loads.filter((_, i) => lifts[i]?.holds);
  return right({
    loads,
    tongueChange: result('tongue load added by the attitude', plus(...changes)),
    unloading: changes,
    decisions: [...guarded.right, ...lifts],
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
