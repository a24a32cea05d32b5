/** A reading of a working in exact fractions of fraction.js: the oracle for every rational step, independent of decimal.js. */
import Fraction from 'fraction.js';
import type { Reading } from '../../src/trace/index.js';

export { Fraction };

export const fraction = (top: bigint, bottom = 1n): Fraction => new Fraction(top, bottom);

/** The exact fraction that decimal digits say. */
export function fractionOf(digits: string): Fraction {
  const [whole = '0', decimals = ''] = digits.split('.');
  return fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
}

const half = fraction(1n, 2n);

/** To whole steps; what lies between two goes `down`, `up`, or to the nearest with halves away from zero or towards it. */
function wholeSteps(steps: Fraction, mode: string): Fraction {
  if (mode === 'down') return steps.floor();
  if (mode === 'up') return steps.ceil();
  const size = steps.abs();
  const whole = mode === 'nearest' ? size.add(half).floor() : size.sub(half).ceil();
  return steps.s < 0n ? whole.neg() : whole;
}

/** Thrown by the steps that leave the fractions: roots, powers, angles. */
export class NotRational extends Error {}
const irrational = (): never => {
  throw new NotRational('not a rational step');
};

export const fractionReading: Reading<Fraction> = {
  leaf: (value) => fractionOf(value.toFixed()),
  sum: (terms) => terms.reduce((sum, term) => sum.add(term), fraction(0n)),
  difference: (a, b) => a.sub(b),
  product: (a, b) => a.mul(b),
  quotient: (a, b) => a.div(b),
  least: (terms) => terms.reduce((best, term) => (term.lt(best) ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (term.gt(best) ? term : best)),
  convert: (a, factor) => a.mul(fractionOf(factor.times.toFixed())).div(fractionOf(factor.over.toFixed())),
  round: (a, step, mode) => {
    const size = fractionOf(step.toFixed());
    return wholeSteps(a.div(size), mode).mul(size);
  },
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
  const gap = fractionOf(digits).sub(exact);
  const { s, n, d } = exact.equals(0) ? gap : gap.div(exact.abs());
  return Number((s * n * 10n ** 40n) / d) / 1e40;
}
