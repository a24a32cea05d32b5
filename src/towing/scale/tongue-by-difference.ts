/** Tongue load as what the trailer's own axles do not carry. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import { type AnyWeight, type Decision, type Derived, difference, inPounds, statics } from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero, noneBelowZero } from '../figures.js';
import { tongueRemark } from '../vehicle/hitched-axle-loads.js';

export interface TongueByDifference {
  readonly tongue: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * What is the tongue load, when the whole trailer and its axles were weighed?
 *
 * `tongue = whole trailer - axles, coupled`. Abroad the two are called ATM and GTM.
 *
 * Not with spring bars at work: they add to the axles, and the difference under-reads the tongue.
 *
 * @param whole the trailer unhitched, all of it on the scale
 * @param axlesCoupled the trailer's axles with the coupler on the ball, bars off
 * @returns lb; a negative tongue is an answer with a note. Left `NotAboveZero` (whole), `BelowZero` (axles)
 * @example tongueByDifference(kg(2890), kg(2650)) // Right 529.1 lb; that is 240 kg
 * @source static equilibrium, derived
 */
export function tongueByDifference(whole: AnyWeight, axlesCoupled: AnyWeight): Either<TowingError, TongueByDifference> {
  const [gross, axles] = [inPounds('trailer gross', whole), inPounds('trailer axles, coupled', axlesCoupled)];
  const above = allAboveZero([['trailer gross', gross]]);
  if (isLeft(above)) return above;
  const weighed = noneBelowZero([['trailer axles, coupled', axles]]);
  if (isLeft(weighed)) return weighed;
  const tongue = difference('tongue load', gross, axles, statics);
  const remark = tongueRemark(tongue);
  return right({ tongue, notes: remark.notes, decisions: [...above.right, ...weighed.right, ...remark.decisions] });
}
