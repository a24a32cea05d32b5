/** The lower bound of a GVWR, and the cargo that a GVWR leaves. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  constant,
  type Derived,
  difference,
  given,
  product,
  type Source,
  sum,
} from '../../trace/index.js';
import { lb, ratio } from '../../units/index.js';
import { type RulesError, rulesError } from '../errors.js';
import { pounds } from '../pounds.js';

const bound: Source = Object.freeze({
  id: 'cfr-567-4-g-3',
  title: 'NHTSA letters nht76-3.20 and aiam0613',
  grade: 'A',
  edition: '1976-01-15',
  clause: '49 CFR 567.4(g)(3)',
});
const capacity: Source = Object.freeze({
  id: 'gf004408',
  title: 'NHTSA letter GF004408',
  grade: 'A',
  edition: '2004',
  clause: '49 CFR 571.110 S3, 567.4(g)(3)',
});

function occupants(seats: number): Either<RulesError, Derived<'lb'>> {
  if (!Number.isInteger(seats) || seats < 0)
    return left(
      rulesError({
        tag: 'OutOfRange',
        what: 'seats',
        found: String(seats),
        needed: 'a whole number, zero on a trailer',
      }),
    );
  return right(
    product('occupants', constant(lb(150), 'weight for a seat', bound), given('seats', ratio(seats), 'published')),
  );
}

/**
 * What is the least GVWR a maker may put on this trailer?
 *
 * `least GVWR = unloaded weight + rated cargo + 150 lb x seats`; a trailer has no seats. Equality is allowed.
 *
 * A bound, not a way to find a GVWR: the GVWR is what the maker put on the label, and axles do not give it.
 *
 * @param trailer unloaded weight of the whole trailer, wheels and tongue together; the rated cargo of the maker; seats
 * @returns lb. Left `OutOfRange`.
 * @example gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 0 }) // Right 7,000 lb
 * @source 49 CFR 567.4(g)(3), as read in agency letters nht76-3.20 and aiam0613
 */
export function gvwrLowerBound(trailer: {
  readonly unloaded: AnyWeight;
  readonly ratedCargo: AnyWeight;
  readonly seats: number;
}): Either<RulesError, Derived<'lb'>> {
  const unloaded = pounds('unloaded weight', trailer.unloaded);
  if (isLeft(unloaded)) return unloaded;
  const cargo = pounds('rated cargo', trailer.ratedCargo);
  if (isLeft(cargo)) return cargo;
  const people = occupants(trailer.seats);
  return isLeft(people) ? people : right(sum('least GVWR', [unloaded.right, cargo.right, people.right], bound));
}

/**
 * How much cargo may the maker rate this trailer for?
 *
 * `largest rated cargo = GVWR - unloaded weight - 150 lb x seats`. Tongue load is inside both and is neither added nor taken
 * off. Below zero: the trailer weighs more than its GVWR before anything is on it.
 *
 * A ceiling on the rating alone: axles, tires, hitch and tow vehicle may leave less.
 *
 * @param trailer GVWR from the label, unloaded weight of the whole trailer, any unit of weight
 * @returns lb. Left `OutOfRange`.
 * @example largestRatedCargo({ gvwr: lb(15000), unloaded: lb(8600), seats: 0 }) // Right 6,400 lb
 * @source 49 CFR 567.4(g)(3), 571.110 S3; agency letter GF004408
 */
export function largestRatedCargo(trailer: {
  readonly gvwr: AnyWeight;
  readonly unloaded: AnyWeight;
  readonly seats: number;
}): Either<RulesError, Derived<'lb'>> {
  const gvwr = pounds('GVWR', trailer.gvwr, 'label');
  if (isLeft(gvwr)) return gvwr;
  const unloaded = pounds('unloaded weight', trailer.unloaded);
  if (isLeft(unloaded)) return unloaded;
  const people = occupants(trailer.seats);
  if (isLeft(people)) return people;
  return right(
    difference(
      'largest rated cargo',
      gvwr.right,
      sum('unloaded weight and occupants', [unloaded.right, people.right]),
      capacity,
    ),
  );
}

/**
 * What is left of the load that the placard allows once the people are in?
 *
 * `left = placard load - weight of the occupants`. In a tow vehicle what is left is for cargo and tongue load together.
 *
 * @param placard the occupant and cargo figure on the placard, any unit of weight
 * @param people what each occupant weighs; a case of the manual uses 150 lb
 * @returns in lb; below zero when the people alone are too heavy. Left `OutOfRange`.
 * @example placardLoadLeft(lb(1400), [lb(150), lb(150), lb(150), lb(150), lb(150)]) // Right 650 lb
 * @source 49 CFR 575.6(a)(5), steps for determining the load limit, as reproduced in vehicle manuals
 */
export function placardLoadLeft(placard: AnyWeight, people: readonly AnyWeight[]): Either<RulesError, Derived<'lb'>> {
  const load = pounds('placard load', placard, 'label');
  if (isLeft(load)) return load;
  const each: Derived<'lb'>[] = [];
  for (const [i, person] of people.entries()) {
    const weighed = pounds(`occupant ${i + 1}`, person);
    if (isLeft(weighed)) return weighed;
    each.push(weighed.right);
  }
  return right(each.length === 0 ? load.right : difference('load left', load.right, sum('occupants', each)));
}
