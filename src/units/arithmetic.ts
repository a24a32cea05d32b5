/** Arithmetic on figures of one unit, and the closed table of products. Nothing here converts a unit by itself. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { snappedDifference, snappedSum } from './closeness.js';
import { type DivisionByZero, divisionByZero } from './errors.js';
import { isFigure, ofDecimal } from './figure.js';
import { compareFigures, exactOrder } from './order.js';
import {
  type Divisor,
  type Multiplier,
  type Product,
  type Quotient,
  unitOfProduct,
  unitOfQuotient,
} from './products.js';
import { type Digits, type Quantity, quantity } from './quantity.js';
import type { Unit } from './unit-list.js';

/** The types say it already; a union of units could still slip two kinds in, and that must never pass in silence. */
function sameUnit(a: Unit, b: Unit): void {
  if (a !== b) throw new TypeError(`${b} is not ${a}: convert it by name first`);
}

/** `a + b` in one unit. @example show(add(lb(3200), lb(9200))) // 12,400 lb */
export function add<U extends Unit>(a: Quantity<U>, b: Quantity<NoInfer<U>>): Quantity<U> {
  sameUnit(a.unit, b.unit);
  return ofDecimal(snappedSum([a.value, b.value]), a.unit);
}

/** `a - b` in one unit; exactly zero when the two agree to 24 digits. @example show(subtract(lb(14000), lb(3200))) // 10,800 lb */
export function subtract<U extends Unit>(a: Quantity<U>, b: Quantity<NoInfer<U>>): Quantity<U> {
  sameUnit(a.unit, b.unit);
  return ofDecimal(snappedDifference(a.value, b.value), a.unit);
}

/** A figure times a plain number. @example show(scale(lb(2540), 4)) // 10,160 lb */
export function scale<U extends Unit>(a: Quantity<U>, times: Digits): Quantity<U> {
  return ofDecimal(a.value.times(quantity(times, 'ratio').value), a.unit);
}

/** `a x b`, if the table of products has the pair. @example show(multiply(lbPerFt('6.7'), foot(20))) // 134 lb */
export function multiply<A extends Unit, B extends Multiplier<A>>(
  a: Quantity<A>,
  b: Quantity<B>,
): Quantity<Product<A, B>> {
  return ofDecimal(a.value.times(b.value), unitOfProduct(a.unit, b.unit)) as Quantity<Product<A, B>>;
}

/**
 * `a / b`, if the table of products has the pair; a plain number when both have one unit.
 *
 * @returns Left `DivisionByZero` when b is zero.
 * @example divide(lb(1500), lb(10000)) // Right 0.15
 */
export function divide<A extends Unit, B extends Divisor<A>>(
  a: Quantity<A>,
  b: Quantity<B>,
): Either<DivisionByZero, Quantity<Quotient<A, B>>> {
  if (b.value.isZero()) return left(divisionByZero(a.unit, b.unit));
  return right(ofDecimal(a.value.div(b.value), unitOfQuotient(a.unit, b.unit)) as Quantity<Quotient<A, B>>);
}

/** -1, 0 or 1. Figures that agree to 24 digits are equal, so a quotient that should tie does tie. @example compare(lb(5080), lb(5200)) // -1 */
export function compare<U extends Unit>(a: Quantity<U>, b: Quantity<NoInfer<U>>): -1 | 0 | 1 {
  sameUnit(a.unit, b.unit);
  return compareFigures(a, b);
}

function pick<U extends Unit>(
  first: Quantity<U>,
  others: readonly Quantity<NoInfer<U>>[],
  better: -1 | 1,
): Quantity<U> {
  let best = first;
  for (const next of others) {
    sameUnit(first.unit, next.unit);
    if (exactOrder(next, best) * better > 0) best = next as Quantity<U>;
  }
  return best;
}

/** The least of one or more figures. @example show(least(lb(5200), lb(5080))) // 5,080 lb */
export function least<U extends Unit>(first: Quantity<U>, ...others: readonly Quantity<NoInfer<U>>[]): Quantity<U> {
  return pick(first, others, -1);
}

/** The greatest of one or more figures. @example show(greatest(lb(5200), lb(5080))) // 5,200 lb */
export function greatest<U extends Unit>(first: Quantity<U>, ...others: readonly Quantity<NoInfer<U>>[]): Quantity<U> {
  return pick(first, others, 1);
}

/**
 * Are these two figures the same, unit and every digit?
 *
 * Undefined where neither is a figure, as test runners expect: `expect.addEqualityTesters([sameFigure])`.
 *
 * `compare` asks another question: there figures that agree to 24 digits are equal.
 *
 * @example sameFigure(lb(7), add(lb(3), lb(4))) // true
 */
export function sameFigure(a: unknown, b: unknown): boolean | undefined {
  if (!isFigure(a) || !isFigure(b)) return isFigure(a) || isFigure(b) ? false : undefined;
  return a.unit === b.unit && exactOrder(a, b) === 0;
}
