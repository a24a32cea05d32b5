/** The weight of tow vehicle and trailer together, and the weakest part of a hitch. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Governed, governedBy } from '../../ratings/index.js';
import { type AnyWeight, type Derived, inPounds, sum } from '../../trace/index.js';
import type { NotAboveZero, NothingLimits } from '../errors.js';
import { allAboveZero } from '../figures.js';

/**
 * What does the combination weigh?
 *
 * `GCW = tow vehicle alone + trailer gross`. The tongue load is inside the trailer's gross weight already: it is not added
 * again, and spring bars do not change the sum.
 *
 * @param towVehicle the truck unhitched, people and cargo aboard, as scaled
 * @param gross the whole laden trailer, tongue load included
 * @returns lb
 * @example combinationWeight(lb(7400), lb(12400)) // 19,800 lb
 * @source common practice, no source: the definition of a gross combination weight
 */
export const combinationWeight = (towVehicle: AnyWeight, gross: AnyWeight): Derived<'lb'> =>
  sum('combination', [inPounds('tow vehicle alone', towVehicle), inPounds('trailer gross', gross)]);

/** A part and what it is rated for. */
export interface RatedPart {
  readonly part: string;
  readonly rating: AnyWeight;
}

/**
 * What is this row of hitch parts good for?
 *
 * `limit = least of the ratings`. Compare like with like: gross ratings with gross ratings, tongue with tongue.
 *
 * @param parts receiver, ball mount, ball, coupler: the rating stamped on each
 * @returns lb and every part that ties; Left `NothingLimits` without a part, `NotAboveZero`
 * @example weakestHitchPart([{ part: 'receiver', rating: lb(5000) }, { part: 'ball', rating: lb(2500) }]) // Right 2,500 lb, 'ball'
 * @source university extension guide PPP-92, as reported in trade press
 */
export function weakestHitchPart(parts: readonly RatedPart[]): Either<NothingLimits | NotAboveZero, Governed> {
  if (parts.length === 0)
    return left({ chapter: 'towing', tag: 'NothingLimits', missing: ['receiver', 'ball mount', 'ball', 'coupler'] });
  const bounds = parts.map(({ part, rating }) => ({ name: part, limit: inPounds(`${part} rating`, rating, 'label') }));
  const above = allAboveZero(bounds.map(({ name, limit }) => [`${name} rating`, limit] as const));
  return isLeft(above) ? above : right(governedBy('weakest part', bounds));
}
