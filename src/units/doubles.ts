/**
 * Arithmetic in doubles with a bound of the error against the figure's decimal of 34 digits.
 *
 * A bound is the most that a double may be away from its decimal. Zero means that they are equal: then the double is a
 * multiple of 1/1024 below 2^53 and its decimal has at most 23 digits, too few to be touched by a rounding to 34 or by a
 * snap to 24. A bound that is not finite means that the doubles do not tell, and that the decimals must be asked.
 */

import type { Decimal } from './decimal.js';

/** Half a unit in the last place of a double, as a share of it, with room for the snaps and for what a bound loses itself. */
const halfUlp = 1.2e-16;
/** What is lost where doubles run out of small numbers. */
const tiny = 1e-300;
/** Above what the sums and products of a bound lose by their own rounding. */
const grown = 1 + 4e-15;
/** Above every snap to 24 digits. */
const snapped = 2e-24;

const wholeLimit = 2 ** 53;
/** Products of multiples of 1/1024 below this are exact in doubles. */
const shortLimit = 2 ** 33;

const isShort = (x: number): boolean => Number.isInteger(x * 1024);

/** The bound of a double that was rounded once from its decimal. */
export const roundedOnce = (x: number): number => Math.abs(x) * halfUlp + tiny;

/** The bound of a double read from at most so many digits that count: none for whole numbers and 32nds that no other digits could mean. */
export function boundOfDigits(x: number, digits: number): number {
  if (x === 0) return digits === 0 ? 0 : tiny;
  const size = Math.abs(x);
  const exact = digits <= 15 && (Number.isInteger(x) ? size < 1e15 : size < 1e9 && Number.isInteger(x * 32));
  return exact ? 0 : roundedOnce(x);
}

/** The rounding error of a + b, exactly (Knuth's two-sum). */
function lostBySum(a: number, b: number, sum: number): number {
  const back = sum - a;
  return Math.abs(a - (sum - back) + (b - back));
}

/** The bound of a + b, of a - b with -b. */
export function boundOfSum(a: number, boundA: number, b: number, boundB: number, sum: number): number {
  const error = boundA + boundB + lostBySum(a, b, sum);
  if (error === 0) return Math.abs(sum) < wholeLimit ? 0 : roundedOnce(sum);
  return (error + (Math.abs(a) + Math.abs(b)) * snapped) * grown;
}

/** The bound of a sum of many terms: a sum negligible against one of them counts as zero. `sizes` is the sum of their sizes. */
export const boundOfTotal = (bound: number, sizes: number): number =>
  bound === 0 ? 0 : (bound + sizes * snapped) * grown;

/** Whether a product of two exact figures is exact. */
const isExactProduct = (a: number, b: number, product: number): boolean =>
  product < shortLimit && product > -shortLimit
    ? isShort(product)
    : Number.isInteger(a) && Number.isInteger(b) && Math.abs(product) < wholeLimit;

/** The bound of a x b: `|a| db + |b| da + da db` and the rounding. */
export function boundOfProduct(a: number, boundA: number, b: number, boundB: number, product: number): number {
  if (boundA === 0 && boundB === 0 && isExactProduct(a, b, product)) return 0;
  if (product === 0 && ((a === 0 && boundA === 0) || (b === 0 && boundB === 0))) return 0;
  const error = Math.abs(a) * boundB + Math.abs(b) * boundA + boundA * boundB;
  return (error + roundedOnce(product)) * grown;
}

/** The bound of a / b: `(da + |a/b| db) / (|b| - db)` and the rounding; not finite where the divisor may be zero. */
export function boundOfQuotient(a: number, boundA: number, b: number, boundB: number, quotient: number): number {
  const size = Math.abs(quotient);
  if (boundA === 0 && boundB === 0) {
    if (b === 0) return Infinity;
    const exact = a < shortLimit && a > -shortLimit && isShort(quotient) && quotient * b === a;
    return exact ? 0 : roundedOnce(quotient);
  }
  const least = Math.abs(b) - boundB;
  if (!(least > 0)) return Infinity;
  return ((boundA + size * grown * boundB) / least + roundedOnce(quotient)) * grown;
}

/** The bound of a square root: `da / root a` and the rounding; not finite near zero and below. */
export function boundOfRoot(a: number, boundA: number, root: number): number {
  if (boundA === 0 && a > 0 && isShort(root) && a < shortLimit && root * root === a) return 0;
  return a > 2 * boundA && a > tiny ? (boundA / root + roundedOnce(root)) * grown * grown : Infinity;
}

const perDegree = Math.PI / 180;
/** The greatest relative error assumed for sine, tangent and their inverses; the language gives no limit, so a test measures the running engine. */
const engineError = 1e-13;
/** Beyond this many degrees the decimals are asked. */
const farthest = 3600;

/** What an angle in degrees is off once it is in radians. */
const radiansOff = (degrees: number, bound: number): number =>
  Math.abs(degrees) < farthest ? (bound + Math.abs(degrees) * 6e-16 + tiny) * perDegree * grown : Infinity;

/** The bound of a sine or cosine: neither is steeper than one. */
export const boundOfSine = (degrees: number, bound: number, sine: number): number =>
  (radiansOff(degrees, bound) + Math.abs(sine) * engineError) * grown;

/** The bound of a tangent, whose slope is `1 + tan^2`; not finite near a right angle. */
export function boundOfTangent(degrees: number, bound: number, tangent: number): number {
  const off = radiansOff(degrees, bound);
  const size = Math.abs(tangent);
  return off * (1 + size) < 1e-3 ? (2 * off * (1 + size * size) + size * engineError) * grown : Infinity;
}

/** The bound of an arc sine in degrees, whose slope is `1 / root (1 - a^2)`; not finite near one and beyond. */
export function boundOfArcSine(a: number, bound: number, degrees: number): number {
  const most = Math.abs(a) + bound;
  if (!(most < 0.999999)) return Infinity;
  return (
    ((1.001 * bound) / Math.sqrt(1 - most * most) / perDegree + Math.abs(degrees) * 2 * engineError + tiny) * grown
  );
}

/** The bound of an arc tangent in degrees: it is not steeper than one. */
export const boundOfArcTangent = (_: number, bound: number, degrees: number): number =>
  (bound / perDegree + Math.abs(degrees) * 2 * engineError + tiny) * grown;

export const sineOf = (degrees: number): number => Math.sin(degrees * perDegree);
export const cosineOf = (degrees: number): number => Math.cos(degrees * perDegree);
export const tangentOf = (degrees: number): number => Math.tan(degrees * perDegree);
export const arcSineOf = (a: number): number => Math.asin(a) / perDegree;
export const arcTangentOf = (a: number): number => Math.atan(a) / perDegree;
/** The double nearest to a decimal; decimals of at most 14 digits, which most are, need no detour over text. */
export function nearestDouble(value: Decimal): number {
  const [high, low] = value.d;
  const groups = value.d.length;
  const shift = Math.floor(value.e / 7) - groups + 1;
  if (high === undefined || groups > 2 || shift > 3 || shift < -3) return value.toNumber();
  const digits = low === undefined ? high : high * 1e7 + low;
  const size = shift < 0 ? digits / 10 ** (-7 * shift) : digits * 10 ** (7 * shift);
  return value.s < 0 ? -size : size;
}
export function digitsOf(value: Decimal): number {
  if (value.d[0] === 0) return 0;
  return value.d.length < 3 ? 14 : value.precision();
}
