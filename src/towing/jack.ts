/** What the jack carries at its foot. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Check, checkLoad, rating, weight } from '../ratings/index.js';
import {
  type AnyLength,
  type AnyShare,
  type AnyWeight,
  type Decision,
  type Derived,
  inPounds,
  over,
  product,
  result,
  statics,
  times,
} from '../trace/index.js';
import type { TowingError } from './errors.js';
import { allAboveZero, plainShare } from './figures.js';
import { jackSpot } from './scale/lever-scale.js';

export interface JackQuestion {
  readonly tongue: AnyWeight;
  readonly jackBehindBall: AnyLength;
  readonly axlesAt: AnyLength;
  /** The static lift rating stamped on the jack. */
  readonly rating: AnyWeight;
  /** What the load is multiplied by before it is compared: the margin somebody chose, 1 for none. */
  readonly margin: AnyShare;
}

export interface JackLoad {
  readonly foot: Derived<'lb'>;
  readonly check: Check;
  readonly decisions: readonly Decision[];
}

/**
 * Is the jack big enough for this tongue?
 *
 * `foot = T a / (a - j)`: the jack is nearer to the axles than the ball is, so it lifts more than the tongue load.
 * T tongue load, lb; a ball to trailer axles, j ball to jack, in. The check compares foot x margin with the rating.
 *
 * Level and standing still; loading a machine over the ramps and lifting the truck with the jack are other questions.
 *
 * @param question the greatest tongue load the trailer will have; the margin is an argument, there is no printed one
 * @returns lb. Left `NotAboveZero` (tongue, length, rating, margin), `BelowZero`, `JackBehindAxles`
 * @example jackLoad({ tongue: lb(1400), jackBehindBall: inch(20), axlesAt: inch(190), rating: lb(2000), margin: ratio(1) }) // Right foot 1,564.7 lb
 * @source static equilibrium, derived; the margin: common practice, no source
 */
export function jackLoad(question: JackQuestion): Either<TowingError, JackLoad> {
  const [tongue, limit] = [inPounds('tongue load', question.tongue), inPounds('jack rating', question.rating, 'label')];
  const margin = plainShare('margin', question.margin);
  const above = allAboveZero([
    ['tongue load', tongue],
    ['jack rating', limit],
    ['margin', margin],
  ]);
  if (isLeft(above)) return above;
  const spot = jackSpot(question);
  if (isLeft(spot)) return spot;
  const { axles: a, ahead: aLessJ } = spot.right;
  const foot = result('load at the jack foot', over(times(tongue, a), aLessJ), statics);
  return right({
    foot,
    check: checkLoad(rating('jack', limit), weight('jack load', product('jack load with margin', foot, margin))),
    decisions: [...above.right, ...spot.right.decisions],
  });
}
