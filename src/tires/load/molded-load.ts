/** The load molded into the sidewall, for single or dual fitment. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide } from '../../trace/index.js';
import { lb, roundCapacityDown, roundLoadUp, show } from '../../units/index.js';
import { own } from '../../units/internal.js';
import type { TiresError } from '../errors.js';
import { inPounds } from './known-figures.js';
import type { Fitment } from './published-rows.js';
import type { Tire } from './tire.js';

export interface MoldedLoad {
  readonly load: Derived<'lb'> | undefined;
  /** The molded single load, which a dual load from elsewhere must not exceed. */
  readonly single: Derived<'lb'> | undefined;
  readonly decisions: readonly Decision[];
}

/** The molded load of this fitment, if there is one. A dual load above the single load is refused: one of them is misread. */
export function moldedLoad(molded: NonNullable<Tire['molded']>, fitment: Fitment): Either<TiresError, MoldedLoad> {
  const [single, dual] = [own(molded, 'single'), own(molded, 'dual')];
  const one = single === undefined ? undefined : inPounds('molded load, single', single, 'label');
  const two = dual === undefined ? undefined : inPounds('molded load, dual', dual, 'label');
  if (one !== undefined && isLeft(one)) return one;
  if (two !== undefined && isLeft(two)) return two;
  const load = fitment === 'single' ? one?.right : two?.right;
  if (one === undefined || two === undefined) return right({ load, single: one?.right, decisions: [] });
  const fits = decide(two.right, '<=', one.right);
  if (!fits.holds)
    return left({
      chapter: 'tires',
      tag: 'DualAboveSingle',
      single: show(roundCapacityDown(one.right.value, lb(1))),
      dual: show(roundLoadUp(two.right.value, lb(1))),
    });
  return right({ load, single: one.right, decisions: [fits] });
}
