/** Several tires on one axle: the least of them counts for all. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Decision, type Derived, decide, leastOf } from '../../trace/index.js';
import { showDesignation } from '../designation/show-designation.js';
import type { NoTires } from '../errors.js';
import type { TireRating } from './tire.js';

export interface AxleTires {
  /** What each tire of the axle may be counted with. */
  readonly each: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/**
 * What does each tire of one axle count for, when they are not alike?
 *
 * `each = least of the ratings`: the tires of an axle share its load about evenly, so the weakest is full first. Different
 * designations or ratings on one axle are a finding.
 *
 * @param ratings of every tire on the axle, from `tireLoadRating`, lb
 * @returns lb a tire, notes; Left `NoTires`
 * @example mixedTires([first, second]) // Right: the lesser rating, note MixedTires
 * @source common practice, no source
 */
export function mixedTires(ratings: readonly TireRating[]): Either<NoTires, AxleTires> {
  const first = ratings[0];
  if (first === undefined) return left({ chapter: 'tires', tag: 'NoTires' });
  const rest = ratings.slice(1);
  const same = rest.map((other) => decide(first.rating, '=', other.rating));
  const alike =
    same.every(({ holds }) => holds) &&
    rest.every((other) => showDesignation(other.designation) === showDesignation(first.designation));
  const each =
    rest.length === 0
      ? first.rating
      : leastOf(
          'least tire rating on the axle',
          ratings.map(({ rating }) => rating),
        );
  const finding = note(
    'MixedTires',
    'tires of different kind or rating stand on one axle; each is counted with the least',
    ratings.map(({ rating }) => rating),
  );
  return right({ each, notes: alike ? [] : [finding], decisions: same });
}
