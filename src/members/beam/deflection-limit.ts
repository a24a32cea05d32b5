/** A deflection against a share of the span. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  commonPractice,
  type Derived,
  inInches,
  minus,
  type OutsideItsRange,
  over,
  result,
} from '../../trace/index.js';
import { compare, inch } from '../../units/index.js';

/** A deflection compared with its limit. */
export interface DeflectionCheck {
  /** The most it may bend, in. */
  readonly limit: Derived<'in'>;
  /** Limit less deflection, in; below zero when it bends more. */
  readonly reserve: Derived<'in'>;
  /** Within at an exact tie. */
  readonly verdict: 'within' | 'over';
}

/**
 * Does this member bend more than so small a share of its span?
 *
 * `limit = span / share`: 360 for L/360. Within when the deflection is not above it.
 *
 * Stiffness is a wish, no strength: no standard for trailers prints a limit. Choose the share; the stress is another question.
 *
 * @param deflection from `beam`, in, down or up
 * @param span between the supports
 * @param share 240, 360, 480: common in building practice
 * @returns limit and reserve in in; Left `OutsideItsRange`
 * @example orThrow(deflectionLimit(inch('0.25'), inch(120), 360)).limit // 0.333 in
 * @source common practice, no source: the shares are those of floors in buildings
 */
export function deflectionLimit(
  deflection: AnyLength,
  span: AnyLength,
  share: number,
): Either<OutsideItsRange, DeflectionCheck> {
  const [bent, length] = [inInches('deflection', deflection), inInches('span', span)];
  const guarded = allHold([
    aboveZero('the span', length),
    aboveZero('the share of the span', inInches('share', inch(share))),
  ]);
  if (isLeft(guarded)) return guarded;
  const limit = result(`span over ${share}`, over(length, share), commonPractice);
  const down = compare(bent.value, inch(0)) < 0 ? result('deflection', minus(bent, bent, bent)) : bent;
  const reserve = result('deflection left', minus(limit, down));
  return right({ limit, reserve, verdict: compare(reserve.value, inch(0)) < 0 ? 'over' : 'within' });
}
