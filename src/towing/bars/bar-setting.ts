/** How spring bars are set, and the moment at the hitch head that follows. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyMoment,
  type AnyShare,
  type AnyWeight,
  asDerived,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  inUnit,
  over,
  plus,
  product,
  result,
  times,
} from '../../trace/index.js';
import { toWire } from '../../units/index.js';
import { has } from '../../units/internal.js';
import type { TowingError } from '../errors.js';
import { aShare, noneBelowZero, noneOf, plainShare } from '../figures.js';

/** How the bars are set, in one of four ways of saying it. */
export type BarSetting =
  /** The moment of both bars at the hitch head. */
  | { readonly moment: AnyMoment }
  /** The lift at the bar ends, both together, and the length of a bar. */
  | { readonly barLoad: AnyWeight; readonly barLength: AnyLength }
  /** The fraction of what the front axle lost that shall come back. */
  | { readonly restore: AnyShare }
  /** What the trailer axles gained from bars off to bars on, as scaled. */
  | { readonly trailerGain: AnyWeight };

export type Setting = { readonly moment: Derived<'lb*in'>; readonly decisions: readonly Decision[] };

/** The moment of both bars at the hitch head, as it is stated: by itself, by what the trailer axles gained, or by the lift at the bar ends. */
function momentAsStated(bars: Exclude<BarSetting, { readonly restore: AnyShare }>, a: Derived<'in'>): Derived<'lb*in'> {
  if (has(bars, 'moment')) return inUnit(asDerived('hitch moment', bars.moment), 'lb*in');
  if (has(bars, 'trailerGain'))
    return product('hitch moment', inPounds('gain of the trailer axles', bars.trailerGain), a);
  const lift = inPounds('lift at the bar ends', bars.barLoad);
  return product('hitch moment', lift, inInches('bar length', bars.barLength));
}

export function momentOf(
  bars: BarSetting,
  a: Derived<'in'>,
  o: Derived<'in'>,
  tongue: Derived<'lb'>,
  offFront: Derived<'lb'>,
): Either<TowingError, Setting> {
  if (has(bars, 'restore')) {
    const share = plainShare('fraction to restore', bars.restore);
    const fraction = aShare('fraction to restore', share);
    if (isLeft(fraction)) return fraction;
    const lost = decide(offFront, '>', noneOf('lb'));
    if (!lost.holds) return left({ chapter: 'towing', tag: 'NothingToRestore', offFront: toWire(offFront.value) });
    const wanted = times(share, tongue, o, a);
    return right({ moment: result('hitch moment', over(wanted, plus(a, o))), decisions: [...fraction.right, lost] });
  }
  const moment = momentAsStated(bars, a);
  const lifts = noneBelowZero([['hitch moment', moment]]);
  return isLeft(lifts) ? lifts : right({ moment, decisions: lifts.right });
}
