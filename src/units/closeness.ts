/**
 * When two figures count as one: trailers of round numbers sit exactly on their limits, and a quotient cut at 34 digits must
 * not turn a tie into a difference.
 */
import { type Decimal, signOf, zero } from './decimal.js';

/**
 * Whether `small` is at most 10^-places of `large`, whatever their signs. The powers of ten settle it, save where they meet;
 * only there the figures are compared in full.
 */
function isWithin(small: Decimal, large: Decimal, places: number): boolean {
  if (signOf(small) === 0 || signOf(large) === 0) return signOf(small) === 0;
  const apart = large.e - places - small.e;
  return apart === 0 ? small.abs().lte(large.abs().times(`1e-${places}`)) : apart > 0;
}

/** Two figures that agree to this many places of the larger one are the same figure: 24 digits where 34 are carried. */
const sameness = 24;

/**
 * A quotient cut at 34 digits does not return to the exact figure when multiplied again. A value that is within
 * 1e-30 of a figure of at most 24 digits *is* that figure; any other value is left alone.
 */
export function snap(value: Decimal): Decimal {
  if (value.precision() <= 24) return value;
  const short = value.toSignificantDigits(24);
  return isWithin(value.minus(short), short, 30) ? short : value;
}

/** The difference, and exactly zero when the two agree to 24 digits: the one gate before any comparison with zero. */
export function snappedDifference(first: Decimal, second: Decimal): Decimal {
  const difference = first.minus(second);
  if (signOf(difference) === 0) return zero;
  return isWithin(difference, first, sameness) || isWithin(difference, second, sameness) ? zero : difference;
}

/** The sum, and exactly zero when terms of both signs cancel to 24 digits. */
export function snappedSum(terms: readonly Decimal[]): Decimal {
  let total = zero;
  for (const term of terms) total = total === zero ? term : total.plus(term);
  const cancelled =
    signOf(total) === 0 || (terms.some(({ s }) => s < 0) && terms.some((term) => isWithin(total, term, sameness)));
  return cancelled ? zero : total;
}

/** Three groups of digits are at most 21 digits and at least 15: what differs by more than one there differs within 24 digits. */
const leadingGroups = 3;
const groupOf = (powerOfTen: number): number => Math.floor(powerOfTen / 7);

/** The order of two figures of one sign as their digits tell it, without subtracting; undefined where they do not. */
function orderOfSizes(first: Decimal, second: Decimal): number | undefined {
  const ahead = groupOf(first.e) - groupOf(second.e);
  if (ahead !== 0) {
    const leading = (ahead > 0 ? first : second).d[0] as number;
    return Math.abs(ahead) > 1 || leading > 1 ? ahead : undefined;
  }
  const groups = Math.max(first.d.length, second.d.length);
  for (let group = 0; group < groups; group += 1) {
    const apart = (first.d[group] ?? 0) - (second.d[group] ?? 0);
    // One apart may be less than that, by the digits that follow.
    if (apart !== 0)
      return groups <= leadingGroups || (group < leadingGroups && Math.abs(apart) > 1) ? apart : undefined;
  }
  return 0;
}

/** -1, 0 or 1 after the snap. */
export function compareDecimals(first: Decimal, second: Decimal): -1 | 0 | 1 {
  const [sign, other] = [signOf(first), signOf(second)];
  if (sign !== other) return sign > other ? 1 : -1;
  if (sign === 0) return 0;
  const order = orderOfSizes(first, second);
  if (order === undefined) return signOf(snappedDifference(first, second));
  if (order === 0) return 0;
  return order > 0 === sign > 0 ? 1 : -1;
}
