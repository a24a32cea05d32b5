/** A reading of a working in exact fractions: the oracle for every rational step, independent of decimal.js. */
import type { Reading } from '../../src/trace/index.js';

export interface Fraction {
  readonly top: bigint;
  readonly bottom: bigint;
}

const gcd = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

export function fraction(top: bigint, bottom = 1n): Fraction {
  if (bottom === 0n) throw new RangeError('a fraction over zero');
  const sign = bottom < 0n ? -1n : 1n;
  const common = gcd(top, bottom * sign) || 1n;
  return { top: (sign * top) / common, bottom: (sign * bottom) / common };
}

/** The exact fraction that decimal digits say. */
export function fractionOf(digits: string): Fraction {
  const [whole = '0', decimals = ''] = digits.split('.');
  return fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
}

export const lessThan = (a: Fraction, b: Fraction): boolean => a.top * b.bottom < b.top * a.bottom;
const times = (a: Fraction, b: Fraction): Fraction => fraction(a.top * b.top, a.bottom * b.bottom);
const plus = (a: Fraction, b: Fraction): Fraction => fraction(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
const over = (a: Fraction, b: Fraction): Fraction => fraction(a.top * b.bottom, a.bottom * b.top);
const floor = (a: Fraction): bigint => a.top / a.bottom - (a.top % a.bottom < 0n ? 1n : 0n);

function wholeSteps(steps: Fraction, mode: string): bigint {
  const down = floor(steps);
  const isWhole = steps.bottom === 1n;
  switch (mode) {
    case 'down':
      return down;
    case 'up':
      return isWhole ? down : down + 1n;
    default: {
      const size = steps.top < 0n ? -steps.top : steps.top;
      const twice = { top: 2n * size, bottom: steps.bottom };
      const halves =
        mode === 'nearest'
          ? floor({ top: twice.top + steps.bottom, bottom: 2n * steps.bottom })
          : -floor({ top: steps.bottom - twice.top, bottom: 2n * steps.bottom });
      return steps.top < 0n ? -halves : halves;
    }
  }
}

/** Thrown by the steps that leave the fractions: roots, powers, angles. */
export class NotRational extends Error {}
const irrational = (): never => {
  throw new NotRational('not a rational step');
};

export const fractionReading: Reading<Fraction> = {
  leaf: (value) => fractionOf(value.toFixed()),
  sum: (terms) => terms.reduce(plus, fraction(0n)),
  difference: (a, b) => plus(a, fraction(-b.top, b.bottom)),
  product: times,
  quotient: over,
  least: (terms) => terms.reduce((best, term) => (lessThan(term, best) ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (lessThan(best, term) ? term : best)),
  convert: (a, factor) => over(times(a, fractionOf(factor.times.toFixed())), fractionOf(factor.over.toFixed())),
  round: (a, step, mode) =>
    times(fraction(wholeSteps(over(a, fractionOf(step.toFixed())), mode)), fractionOf(step.toFixed())),
  squareRoot: irrational,
  power: irrational,
  sine: irrational,
  cosine: irrational,
  tangent: irrational,
  arcSine: irrational,
  arcTangent: irrational,
};

/** How far a decimal stands from a fraction, as a share of the fraction (or of one when it is zero). */
export function relativeGap(digits: string, exact: Fraction): number {
  const gap = fractionReading.difference(fractionOf(digits), exact);
  const size = exact.top === 0n ? fraction(1n) : fraction(exact.top < 0n ? -exact.top : exact.top, exact.bottom);
  const share = over(gap, size);
  return Number((share.top * 10n ** 40n) / share.bottom) / 1e40;
}
