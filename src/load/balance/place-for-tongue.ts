/** Position of the machine's balance point for a given tongue share. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyShare,
  type AnyWeight,
  aboveZero,
  allHold,
  between,
  constant,
  type Decision,
  type Derived,
  inPounds,
  inShare,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { BalanceError } from '../errors.js';
import { balance } from './balance.js';
import type { Item } from './item.js';

/** The position of the balance point for a wanted tongue share. */
export interface PlaceForTongue {
  /** Balance point behind the coupler. It may lie off the deck, or behind the axles: that is an answer. */
  readonly at: Derived<'in'>;
  readonly tongue: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

/**
 * Where must the machine balance for this tongue share?
 *
 * `x = a [1 - f - (f W0 - T0)/P]`; a coupler to axles, f the share wanted of the gross weight, W0 and T0 weight and
 * tongue load without the machine, P the machine weight. Calculated as `(a (P + W0 - f (W0 + P)) - sum of w_i x_i) / P`.
 *
 * Deck ends and ratings are not checked: `placementWindow` checks them.
 *
 * @param trailer the items that stay and the axles, as in `balance`
 * @param machineWeight lb, scale
 * @param share of the gross weight, a plain number or percent, from 0 to 100 %
 * @returns Left from `balance`, or `OutsideItsRange`
 * @example orThrow(placeForTongueShare({ items: [{ name: 'trailer', weight: lb(3200), tongue: lb(480) }], axlesAt: inch(190) }, lb(9200), percent(12))).at // 169.18 in
 * @source static equilibrium, derived
 */
export function placeForTongueShare(
  trailer: { readonly items: readonly Item[]; readonly axlesAt: AnyLength },
  machineWeight: AnyWeight,
  share: AnyShare,
): Either<BalanceError | OutsideItsRange, PlaceForTongue> {
  const without = balance(trailer.items, { axlesAt: trailer.axlesAt });
  if (isLeft(without)) return without;
  const { gross: weight, axlesAt: a, lines } = without.right;
  const load = inPounds('machine weight', machineWeight);
  const wanted = inShare('tongue share wanted', share);
  const guarded = allHold([
    aboveZero('machine weight', load),
    ...between('tongue share wanted', wanted, constant(ratio(0)), constant(ratio(1)), 'included'),
  ]);
  if (isLeft(guarded)) return guarded;
  const gross = result('gross weight', plus(weight, load));
  const tongue = result('tongue load wanted', times(wanted, gross));
  const axleLoad = result('axle load wanted', minus(gross, tongue));
  const moment = plus(...lines.map((line) => line.moment));
  const at = result('place of the balance point', over(minus(times(axleLoad, a), moment), load), statics);
  return right({ at, tongue, decisions: [...without.right.decisions, ...guarded.right] });
}
