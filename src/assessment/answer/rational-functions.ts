/** Roots, powers and angles of fractions, to fifty digits. */
import { floor, none, over, plus, type Rational, rational, size } from './rational.js';

const half = rational(1n, 2n);

/** So many decimals are carried; fifty of them are sure. */
const places = 70n;
const unit = 10n ** places;
/** From the published digits: 3.14159 26535 89793 23846 26433 83279 50288 41971 69399 37510 58209 74944 59230 78164 06286. */
const pi = 31415926535897932384626433832795028841971693993751058209749445923078164n;

const scaled = (a: Rational): bigint => (a.top * unit) / a.bottom;
const unscaled = (a: bigint): Rational => rational(a, unit);
const product = (a: bigint, b: bigint): bigint => (a * b) / unit;
const quotient = (a: bigint, b: bigint): bigint => (a * unit) / b;

function wholeRoot(a: bigint): bigint {
  if (a < 2n) return a;
  let root = 1n << BigInt((a.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (root + a / root) >> 1n;
    if (next >= root) return root;
    root = next;
  }
}

/** Exact where top and bottom are squares. */
export function squareRoot(a: Rational): Rational | undefined {
  if (a.top < 0n) return undefined;
  const [top, bottom] = [wholeRoot(a.top), wholeRoot(a.bottom)];
  if (top * top === a.top && bottom * bottom === a.bottom) return rational(top, bottom);
  return unscaled(wholeRoot((a.top * unit * unit) / a.bottom));
}

/** `x - x^3/3! + ...` and `1 - x^2/2! + ...`, for |x| up to a half turn. */
function series(first: bigint, x: bigint, from: bigint): bigint {
  const square = product(x, x);
  let [term, total] = [first, first];
  for (let n = from; term !== 0n; n += 2n) {
    term = -product(term, square) / (n * (n + 1n));
    total += term;
  }
  return total;
}

/** Degrees as radians within half a turn. */
function radians(degrees: Rational): bigint {
  const turns = rational(floor(plus(over(degrees, rational(360n)), half)) * 360n);
  const within = plus(degrees, { top: -turns.top, bottom: turns.bottom });
  return (within.top * pi) / (within.bottom * 180n);
}

const sineOf = (x: bigint): bigint => series(x, x, 2n);
const cosineOf = (x: bigint): bigint => series(unit, x, 1n);

export const sine = (degrees: Rational): Rational => unscaled(sineOf(radians(degrees)));
export const cosine = (degrees: Rational): Rational => unscaled(cosineOf(radians(degrees)));
export function tangent(degrees: Rational): Rational | undefined {
  const x = radians(degrees);
  const run = cosineOf(x);
  return run === 0n ? undefined : unscaled(quotient(sineOf(x), run));
}

/** `atan x = 2 atan(x / (1 + sqrt(1 + x^2)))`, until the series `x - x^3/3 + ...` is short. */
function arcTangentOf(x: bigint): bigint {
  let [short, doublings] = [x, 0n];
  while (short > unit / 10n || short < -unit / 10n) {
    short = quotient(short, unit + wholeRoot(unit * unit + short * short));
    doublings += 1n;
  }
  const square = product(short, short);
  let [power, total] = [short, short];
  for (let n = 3n; power !== 0n; n += 2n) {
    power = -product(power, square);
    total += power / n;
  }
  return total << doublings;
}

const degrees = (x: bigint): Rational => rational(x * 180n, pi);

export const arcTangent = (a: Rational): Rational => degrees(arcTangentOf(scaled(a)));
export function arcSine(a: Rational): Rational | undefined {
  const x = scaled(a);
  if (x > unit || x < -unit) return undefined;
  if (x === unit || x === -unit) return rational(x > 0n ? 90n : -90n);
  return degrees(arcTangentOf(quotient(x, wholeRoot(unit * unit - x * x))));
}

/** `ln x = 2 atanh((x - 1) / (x + 1))`, after square roots that bring x near one. */
function logarithm(x: bigint): bigint {
  let [near, doublings] = [x, 1n];
  while (near > unit + unit / 10n || near < unit - unit / 10n) {
    near = wholeRoot(near * unit);
    doublings += 1n;
  }
  const y = quotient(near - unit, near + unit);
  const square = product(y, y);
  let [power, total] = [y, y];
  for (let n = 3n; power !== 0n; n += 2n) {
    power = product(power, square);
    total += power / n;
  }
  return total << doublings;
}

/** `e^x = (e^(x / 2^k))^(2^k)` with the series `1 + x + x^2/2! + ...`. */
function exponential(x: bigint): bigint {
  let [short, squarings] = [x, 0];
  while (short > unit / 10n || short < -unit / 10n) {
    short /= 2n;
    squarings += 1;
  }
  let [term, total] = [unit, unit];
  for (let n = 1n; term !== 0n; n += 1n) {
    term = product(term, short) / n;
    total += term;
  }
  for (let i = 0; i < squarings; i += 1) total = product(total, total);
  return total;
}

/** Whole powers up to this one are exact. */
const exactPower = 16n;
/** The logarithm of the largest figure that is worked out. */
const largest = 6000n * unit;

/** A number above zero to a power; small whole powers exactly. */
export function power(base: Rational, exponent: Rational): Rational | undefined {
  if (base.top < 0n) return undefined;
  if (base.top === 0n) return exponent.top > 0n ? none : undefined;
  const count = size(exponent).top;
  if (exponent.bottom === 1n && count <= exactPower) {
    const raised = { top: base.top ** count, bottom: base.bottom ** count };
    return exponent.top < 0n ? rational(raised.bottom, raised.top) : raised;
  }
  const near = scaled(base);
  const raised = near <= 0n ? largest : (logarithm(near) * exponent.top) / exponent.bottom;
  return raised >= largest || raised <= -largest ? undefined : unscaled(exponential(raised));
}
