/**
 * The recorded steps: each computes a figure and keeps what it did. These are the only way to arithmetic with working.
 *
 * The first argument is the name of the result in formulas, or null for a step written inside its user's formula.
 */
import { boundOfConversion, conversionBetween, convertedDouble } from '../units/convert.js';
import { boundOfProduct, boundOfQuotient, boundOfSum } from '../units/doubles.js';
import { boundOf, doubleOf } from '../units/figure.js';
import type { Quantity, RoundingMode, SameDimension, Unit } from '../units/index.js';
import {
  type Divisor,
  type Multiplier,
  type Product,
  type Quotient,
  unitOfProduct,
  unitOfQuotient,
} from '../units/products.js';
import { mustBeStep, roundedDouble } from '../units/rounding.js';
import type { Derived } from './node.js';
import type { Source } from './source.js';
import { type Name, recorded, recordedOfOne, recordedOfTwo } from './step.js';
import { sameUnit } from './terms.js';

/** `a - b` in one unit; exactly zero when the two agree to 24 digits, so an exact tie is never printed as a tiny surplus or overload. @example difference('rest', given('GVWR', lb(14000)), grossWeight) // 1,600 lb */
export function difference<U extends Unit>(
  symbol: Name,
  a: Derived<U>,
  b: Derived<NoInfer<U>>,
  source?: Source,
): Derived<U> {
  sameUnit(a, b);
  const first = doubleOf(a.value);
  const second = doubleOf(b.value);
  const bound = boundOfSum(first, boundOf(a.value), -second, boundOf(b.value), first - second);
  return recordedOfTwo(symbol, 'difference', a, b, a.value.unit, first - second, bound, source);
}

/** `a x b`, if the table of products has the pair. @example product('tongue load', grossWeight, given('tongue share', ratio('0.12'))) // 1,488 lb */
export function product<A extends Unit, B extends Multiplier<A>>(
  symbol: Name,
  a: Derived<A>,
  b: Derived<B>,
  source?: Source,
): Derived<Product<A, B>> {
  const unit = unitOfProduct(a.value.unit, b.value.unit) as Product<A, B>;
  const first = doubleOf(a.value);
  const second = doubleOf(b.value);
  const double = first * second;
  const bound = boundOfProduct(first, boundOf(a.value), second, boundOf(b.value), double);
  return recordedOfTwo(symbol, 'product', a, b, unit, double, bound, source);
}

/** `a / b`, if the table of products has the pair. The caller has ruled out a zero divisor. @example quotient('each axle', given('axle load', lb(10800)), constant(ratio(2))) // 5,400 lb */
export function quotient<A extends Unit, B extends Divisor<A>>(
  symbol: Name,
  a: Derived<A>,
  b: Derived<B>,
  source?: Source,
): Derived<Quotient<A, B>> {
  const unit = unitOfQuotient(a.value.unit, b.value.unit) as Quotient<A, B>;
  const first = doubleOf(a.value);
  const second = doubleOf(b.value);
  const double = first / second;
  const bound = boundOfQuotient(first, boundOf(a.value), second, boundOf(b.value), double);
  return recordedOfTwo(symbol, 'quotient', a, b, unit, double, bound, source);
}

/** The figure in another unit of its dimension; the figure itself when it is in that unit already. @example converted('length', given('deck', foot(20)), 'in') // 240 in */
export function converted<U extends Unit, T extends SameDimension<U>>(
  symbol: Name,
  a: Derived<U>,
  unit: T,
): Derived<T> {
  if ((a.value.unit as Unit) === unit) return a as unknown as Derived<T>;
  const conversion = conversionBetween(a.value.unit, unit);
  const double = convertedDouble(doubleOf(a.value), conversion);
  const bound = boundOfConversion(doubleOf(a.value), boundOf(a.value), conversion, double);
  const { factor } = conversion;
  return recorded(symbol, 'convert', [a.why], a.why.basis, unit, double, bound, undefined, factor);
}

/** The weight in pounds as the force it presses with: `weightToForce`, recorded. @example weightAsForce('force', grossWeight) // 12,400 lbf */
export function weightAsForce(symbol: Name, weight: Derived<'lb'>): Derived<'lbf'> {
  return recordedOfOne(symbol, 'relabel', weight, 'lbf', doubleOf(weight.value), boundOf(weight.value), undefined);
}

/** The weight in pounds that presses with this force at standard gravity: the way back from `weightAsForce`. @example forceAsWeight('weight', weightAsForce('force', grossWeight)) // 12,400 lb */
export function forceAsWeight(symbol: Name, force: Derived<'lbf'>): Derived<'lb'> {
  return recordedOfOne(symbol, 'relabel', force, 'lb', doubleOf(force.value), boundOf(force.value), undefined);
}

/** A step that rounds: the mode and the step are part of the working. @example rounded('printed', given('load', lb('2537.5')), lb(5), 'nearest') // 2,540 lb */
export function rounded<U extends Unit>(
  symbol: Name,
  a: Derived<U>,
  to: Quantity<NoInfer<U>>,
  mode: RoundingMode,
  source?: Source,
): Derived<U> {
  mustBeStep(to);
  const { double, bound } = roundedDouble(a.value, to, mode);
  const rounding = { mode, step: to.value };
  const { unit } = a.value;
  return recorded(symbol, 'round', [a.why], a.why.basis, unit, double, bound, source, undefined, rounding);
}

/** A capacity, rounded down to a multiple of `to`. @example roundedDown('payload', given('allowed', lb('7549.9')), lb(1)) // 7,549 lb */
export const roundedDown = <U extends Unit>(symbol: Name, a: Derived<U>, to: Quantity<NoInfer<U>>): Derived<U> =>
  rounded(symbol, a, to, 'down');

/** A load, rounded up to a multiple of `to`. @example roundedUp('load', given('counted', lb('1631.2')), lb(1)) // 1,632 lb */
export const roundedUp = <U extends Unit>(symbol: Name, a: Derived<U>, to: Quantity<NoInfer<U>>): Derived<U> =>
  rounded(symbol, a, to, 'up');
