/**
 * Exact fractions of big integers: the arithmetic that an answer is verified with. It is independent of the decimals that
 * the answer was computed with.
 */

/** `top / bottom`; the bottom is greater than zero, and the two have no common factor. */
export interface Rational {
  readonly top: bigint;
  readonly bottom: bigint;
}

const sizeOf = (a: bigint): bigint => (a < 0n ? -a : a);

function commonFactor(a: bigint, b: bigint): bigint {
  let [x, y] = [sizeOf(a), sizeOf(b)];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** @throws RangeError for a fraction over zero: the caller rules it out. */
export function rational(top: bigint, bottom = 1n): Rational {
  if (bottom === 0n) throw new RangeError('a fraction over zero');
  const common = commonFactor(top, bottom);
  const sign = bottom < 0n ? -1n : 1n;
  return { top: (sign * top) / common, bottom: (sign * bottom) / common };
}

export const none: Rational = { top: 0n, bottom: 1n };

/** More digits than any figure of an answer has; a longer text is not read. */
const mostDigits = 400;

/** The exact fraction that decimal digits say, without exponent; undefined for any other text. */
export function rationalOf(digits: string): Rational | undefined {
  const read = /^(-?)(\d+)(?:\.(\d+))?$/.exec(digits);
  if (read === null || digits.length > mostDigits) return undefined;
  const [, sign = '', whole = '', decimals = ''] = read;
  const size = BigInt(whole + decimals);
  return rational(sign === '-' ? -size : size, 10n ** BigInt(decimals.length));
}

export const plus = (a: Rational, b: Rational): Rational =>
  rational(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
export const negative = ({ top, bottom }: Rational): Rational => ({ top: -top, bottom });
export const minus = (a: Rational, b: Rational): Rational => plus(a, negative(b));
export const times = (a: Rational, b: Rational): Rational => rational(a.top * b.top, a.bottom * b.bottom);
/** The caller rules out a zero divisor. */
export const over = (a: Rational, b: Rational): Rational => rational(a.top * b.bottom, a.bottom * b.top);
export const size = ({ top, bottom }: Rational): Rational => ({ top: sizeOf(top), bottom });

/** -1, 0 or 1. */
export function order(a: Rational, b: Rational): -1 | 0 | 1 {
  const [left, right] = [a.top * b.bottom, b.top * a.bottom];
  if (left === right) return 0;
  return left < right ? -1 : 1;
}

/** The greatest whole number that is not above the figure. */
export const floor = ({ top, bottom }: Rational): bigint => top / bottom - (top < 0n && top % bottom !== 0n ? 1n : 0n);

/** Figures that agree to so many digits are one figure, here as in the recorded steps. */
export const agreement = 24n;
const share = 10n ** agreement;

/** Whether `small` is at most 10^-24 of `large`. */
export const isNothingBeside = (small: Rational, large: Rational): boolean =>
  sizeOf(small.top) * large.bottom * share <= sizeOf(large.top) * small.bottom;

/** The difference, and exactly zero where the two agree to 24 digits. */
export function snappedMinus(a: Rational, b: Rational): Rational {
  const difference = minus(a, b);
  return isNothingBeside(difference, a) || isNothingBeside(difference, b) ? none : difference;
}

/** The order of two figures that count as equal where they agree to 24 digits. */
export const snappedOrder = (a: Rational, b: Rational): -1 | 0 | 1 => order(snappedMinus(a, b), none);

/** A figure by its first digits, for words: `4838.709677`. */
export function digitsOf(figure: Rational, places = 6): string {
  const scaled = (sizeOf(figure.top) * 10n ** BigInt(places) * 2n + figure.bottom) / (2n * figure.bottom);
  const text = scaled.toString().padStart(places + 1, '0');
  const decimals = text.slice(-places).replace(/0+$/, '');
  return `${figure.top < 0n ? '-' : ''}${text.slice(0, -places)}${decimals === '' ? '' : `.${decimals}`}`;
}
