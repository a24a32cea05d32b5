/** The steps of a working in fractions: sums that cancel, the least and the greatest, rounding by name. */
import {
  floor,
  isNothingBeside,
  none,
  over,
  plus,
  type Rational,
  rational,
  size,
  snappedOrder,
  times,
} from './rational.js';

/** The sum, and exactly zero where terms of both signs cancel to 24 digits. */
export function snappedSum(terms: readonly Rational[]): Rational {
  const total = terms.reduce(plus, none);
  const cancels = terms.some(({ top }) => top < 0n) && terms.some((term) => isNothingBeside(total, term));
  return cancels ? none : total;
}

export const least = (terms: readonly [Rational, ...Rational[]]): Rational =>
  terms.reduce((best, term) => (snappedOrder(term, best) < 0 ? term : best));
export const greatest = (terms: readonly [Rational, ...Rational[]]): Rational =>
  terms.reduce((best, term) => (snappedOrder(term, best) > 0 ? term : best));

const half = rational(1n, 2n);

/** The nearest whole number, halves away from zero. */
const nearest = (a: Rational): bigint => (a.top < 0n ? -1n : 1n) * floor(plus(size(a), half));

/** Rounds to a multiple of a step greater than zero; a value that agrees with a multiple to 24 digits is that multiple. */
export function rounded(value: Rational, step: Rational, mode: string): Rational | undefined {
  const steps = over(value, step);
  const whole = rational(nearest(steps));
  if (snappedOrder(steps, whole) === 0) return times(whole, step);
  const count = wholeSteps(steps, mode);
  return count === undefined ? undefined : times(rational(count), step);
}

function wholeSteps(steps: Rational, mode: string): bigint | undefined {
  switch (mode) {
    case 'down':
      return floor(steps);
    case 'up':
      return floor(steps) + 1n;
    case 'nearest':
      return nearest(steps);
    case 'nearest-down': {
      const away = nearest(steps);
      const isHalf = snappedOrder(size(plus(steps, rational(-away))), half) === 0;
      return isHalf && away !== 0n ? away - (steps.top < 0n ? -1n : 1n) : away;
    }
    default:
      return undefined;
  }
}
