/** Tongue load with a bathroom scale and a beam. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyWeight,
  type Decision,
  type Derived,
  decide,
  difference,
  inInches,
  inPounds,
  minus,
  over,
  quotient,
  result,
  statics,
  sum,
  times,
} from '../../trace/index.js';
import { toWire } from '../../units/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero, noneBelowZero } from '../figures.js';

/** Where the tongue rests on the beam: at the coupler, or at the jack some way behind the ball. */
export type TonguePoint = 'coupler' | { readonly jackBehindBall: AnyLength; readonly axlesAt: AnyLength };

export interface LeverScaleQuestion {
  /** The scale with the tongue on the beam. */
  readonly reading: AnyWeight;
  /** The scale with the beam alone, set up in the same way. */
  readonly beamTare: AnyWeight;
  /** From the pipe on the ground to the point where the tongue rests. */
  readonly pipeToTongue: AnyLength;
  /** From that point on to the pipe over the scale. */
  readonly tongueToScale: AnyLength;
  readonly tongueRestsAt: TonguePoint;
}

export interface LeverScaleReading {
  /** Where the tongue rests on the beam. */
  readonly atPoint: Derived<'lb'>;
  /** At the ball: the tongue load. */
  readonly tongue: Derived<'lb'>;
  /** What the scale's reading is multiplied by. */
  readonly factor: Derived<'ratio'>;
  readonly decisions: readonly Decision[];
}

/**
 * What is the tongue load by a bathroom scale and a beam?
 *
 * `at the point = (reading - beam) (p + q) / p`; at the ball, when the jack rests on the beam, `x (a - j) / a`.
 * p pipe to tongue, q tongue to scale, a ball to trailer axles, j ball to jack. The factor is (p + q) / p for this beam:
 * three only when q is twice p.
 *
 * Level trailer, level ground, nobody leaning on it. A tongue that pulls up cannot be read in this way.
 *
 * @param question readings in any weight, lengths with a tape along the beam and along the trailer
 * @returns lb. Left `NotAboveZero` (p, a), `BelowZero` (tare, q, j), `ReadingBelowTare`, `JackBehindAxles`
 * @example leverScale({ reading: lb(220), beamTare: lb(20), pipeToTongue: foot(1), tongueToScale: foot(2), tongueRestsAt: 'coupler' }) // Right 600 lb
 * @source hitch and manual how-to pages; one trailer maker manual; the jack's correction is static equilibrium, derived
 */
export function leverScale(question: LeverScaleQuestion): Either<TowingError, LeverScaleReading> {
  const [reading, tare] = [inPounds('scale reading', question.reading), inPounds('beam alone', question.beamTare)];
  const [p, q] = [
    inInches('pipe to tongue', question.pipeToTongue),
    inInches('tongue to scale', question.tongueToScale),
  ];
  const above = allAboveZero([['pipe to tongue', p]]);
  if (isLeft(above)) return above;
  const others = noneBelowZero([
    ['beam alone', tare],
    ['tongue to scale', q],
  ]);
  if (isLeft(others)) return others;
  const heavier = decide(reading, '>=', tare);
  if (!heavier.holds)
    return left({
      chapter: 'towing',
      tag: 'ReadingBelowTare',
      reading: toWire(reading.value),
      tare: toWire(tare.value),
    });

  const beam = sum('length of the beam', [p, q]);
  const factor = quotient('factor of the beam', beam, p);
  const atPoint = result('load where the tongue rests', over(times(minus(reading, tare), beam), p), statics);
  const decisions = [...above.right, ...others.right, heavier];
  if (question.tongueRestsAt === 'coupler') return right({ atPoint, tongue: atPoint, factor, decisions });
  const spot = jackSpot(question.tongueRestsAt);
  if (isLeft(spot)) return spot;
  const { ahead, axles } = spot.right;
  const tongue = result('tongue load', over(times(atPoint, ahead), axles), statics);
  return right({ atPoint, tongue, factor, decisions: [...decisions, ...spot.right.decisions] });
}

/** The lengths of a jack: ball to axles, and jack to axles. */
export interface JackSpot {
  readonly axles: Derived<'in'>;
  readonly ahead: Derived<'in'>;
  readonly decisions: readonly Decision[];
}

/** Reads the place of a jack: behind the ball and ahead of the axles. */
export function jackSpot(place: {
  readonly jackBehindBall: AnyLength;
  readonly axlesAt: AnyLength;
}): Either<TowingError, JackSpot> {
  const [jack, axles] = [
    inInches('ball to jack', place.jackBehindBall),
    inInches('ball to trailer axles', place.axlesAt),
  ];
  const long = allAboveZero([['ball to trailer axles', axles]]);
  if (isLeft(long)) return long;
  const behind = noneBelowZero([['ball to jack', jack]]);
  if (isLeft(behind)) return behind;
  const before = decide(jack, '<', axles);
  if (!before.holds)
    return left({
      chapter: 'towing',
      tag: 'JackBehindAxles',
      jackBehindBall: toWire(jack.value),
      axlesAt: toWire(axles.value),
    });
  return right({
    axles,
    ahead: difference('jack to trailer axles', axles, jack),
    decisions: [...long.right, ...behind.right, before],
  });
}
