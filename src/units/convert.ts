/** Exact conversion: by the definitions, multiplied before divided, so that a round trip is the same figure. */

import { snap } from './closeness.js';
import { Decimal, one } from './decimal.js';
import { boundOfDigits, boundOfProduct, boundOfQuotient } from './doubles.js';
import { begin, boundOf, doubleOf, laterFrom, ofDecimal } from './figure.js';
import { frozen } from './frozen.js';
import type { Quantity } from './quantity.js';
import { type SameDimension, type Unit, unitList } from './unit-list.js';

/** The exact fraction that takes a figure in `from` to one in `to`. Units of one dimension only. */
export interface Factor {
  readonly times: Decimal;
  readonly over: Decimal;
}

/** A factor, and the double to multiply by or, where only that is a whole number, to divide by. */
interface Conversion {
  readonly factor: Factor;
  readonly double: number;
  readonly bound: number;
  readonly divides: boolean;
}

const known = new Map<Unit, Map<Unit, Conversion>>();

function conversionOf(factor: Factor): Conversion {
  const [times, over] = [factor.times.div(factor.over), factor.over.div(factor.times)];
  const divides = !isShort(times) && isShort(over);
  const double = (divides ? over : times).toNumber();
  return { factor, double, bound: boundOfDigits(double, isShort(divides ? over : times) ? 15 : 34), divides };
}

const isShort = (figure: Decimal): boolean => figure.precision() <= 15;

function madeBetween(from: Unit, to: Unit): Conversion {
  const [dimension, size, per] = unitList[from];
  const [targetDimension, targetSize, targetPer] = unitList[to];
  if (dimension !== targetDimension)
    throw new TypeError(`${from} measures ${dimension}, ${to} measures ${targetDimension}`);
  return conversionOf(
    from === to
      ? { times: one, over: one }
      : { times: new Decimal(size).times(targetPer), over: new Decimal(targetSize).times(per) },
  );
}

/** The way from one unit to another of its dimension. */
export function conversionBetween(from: Unit, to: Unit): Conversion {
  let row = known.get(from);
  if (row === undefined) {
    row = new Map();
    known.set(from, row);
  }
  let found = row.get(to);
  if (found === undefined) {
    found = frozen(madeBetween(from, to));
    row.set(to, found);
  }
  return found;
}

/** The factor between two units of one dimension. */
export const factorBetween = (from: Unit, to: Unit): Factor => conversionBetween(from, to).factor;

/** The double of a converted figure. */
export const convertedDouble = (a: number, { double, divides }: Conversion): number =>
  divides ? a / double : a * double;

/** The bound of a converted double. */
export const boundOfConversion = (
  a: number,
  boundA: number,
  { double, bound, divides }: Conversion,
  converted: number,
): number =>
  divides ? boundOfQuotient(a, boundA, double, bound, converted) : boundOfProduct(a, boundA, double, bound, converted);

/** Applies a factor to a bare decimal; the arithmetic of `convert`, shared with the recorded step. */
export function applyFactor(value: Decimal, factor: Factor): Decimal {
  return snap(value.times(factor.times).div(factor.over));
}

/**
 * What is this figure in another unit?
 *
 * `q in target = q x size(from) / size(target)`, the sizes being the definitions in the unit list.
 *
 * @example show(convert(kg(1150), 'lb')) // 2,535.31601512... lb
 * @source NIST SP 811, appendix B.
 */
export function convert<U extends Unit, T extends SameDimension<U>>(q: Quantity<U>, target: T): Quantity<T> {
  if ((q.unit as Unit) === target) return q as unknown as Quantity<T>;
  const conversion = conversionBetween(q.unit, target);
  const double = convertedDouble(doubleOf(q), conversion);
  const bound = boundOfConversion(doubleOf(q), boundOf(q), conversion, double);
  if (!(bound < Infinity)) return ofDecimal(applyFactor(q.value, conversion.factor), target) as Quantity<T>;
  const converted = laterFrom(target, double, bound, applyLater);
  begin(converted, { figure: q, factor: conversion.factor });
  return converted as Quantity<T>;
}

function applyLater(step: object): Decimal {
  const { figure, factor } = step as { readonly figure: Quantity<Unit>; readonly factor: Factor };
  return applyFactor(figure.value, factor);
}
