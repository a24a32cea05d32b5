/** Which of two figures is the greater: by their doubles where these are clear of their bounds, else by their decimals. */
import { compareDecimals } from './closeness.js';
import { signOf } from './decimal.js';
import { boundOfProduct } from './doubles.js';
import { boundOf, doubleOf } from './figure.js';
import type { Quantity } from './quantity.js';
import type { Unit } from './unit-list.js';

/** Above every snap: figures that differ by more than this share are different figures. */
const snapped = 1e-22;
const grown = 1 + 4e-15;

/** The order as the doubles tell it; undefined where they do not. Exact doubles that differ do so within 24 digits. */
function orderOfDoubles(a: number, boundA: number, b: number, boundB: number): -1 | 0 | 1 | undefined {
  const bound = boundA + boundB;
  const gap = a - b;
  const doubt = bound === 0 ? 0 : (bound + (Math.abs(a) + Math.abs(b)) * snapped) * grown;
  if (gap > doubt) return 1;
  if (gap < -doubt) return -1;
  return bound === 0 ? 0 : undefined;
}

const orderOf = (a: Quantity<Unit>, b: Quantity<Unit>): -1 | 0 | 1 | undefined =>
  orderOfDoubles(doubleOf(a), boundOf(a), doubleOf(b), boundOf(b));

/** -1, 0 or 1 after the snap, as `compareDecimals` of the two decimals. Both figures in one unit. */
export const compareFigures = (a: Quantity<Unit>, b: Quantity<Unit>): -1 | 0 | 1 =>
  a === b ? 0 : (orderOf(a, b) ?? compareDecimals(a.value, b.value));

/** -1, 0 or 1, without any snap: of two figures that count as one, one may still be written with more digits. */
export const exactOrder = (a: Quantity<Unit>, b: Quantity<Unit>): number =>
  a === b ? 0 : (orderOf(a, b) ?? a.value.comparedTo(b.value));

/** Whether a figure is between two others, both included, digit for digit. All in one unit. */
export const isBetween = (figure: Quantity<Unit>, least: Quantity<Unit>, most: Quantity<Unit>): boolean =>
  exactOrder(figure, least) >= 0 && exactOrder(figure, most) <= 0;

/** -1, 0 or 1 against zero. */
export function signOfFigure(figure: Quantity<Unit>): -1 | 0 | 1 {
  const double = doubleOf(figure);
  const bound = boundOf(figure);
  if (double > bound) return 1;
  if (double < -bound) return -1;
  return bound === 0 ? 0 : signOf(figure.value);
}

/** The order of `a x b` and `c x d` after the snap: shares are compared so, without dividing. */
export function compareProducts(
  a: Quantity<Unit>,
  b: Quantity<Unit>,
  c: Quantity<Unit>,
  d: Quantity<Unit>,
): -1 | 0 | 1 {
  const first = doubleOf(a) * doubleOf(b);
  const second = doubleOf(c) * doubleOf(d);
  const order = orderOfDoubles(
    first,
    boundOfProduct(doubleOf(a), boundOf(a), doubleOf(b), boundOf(b), first),
    second,
    boundOfProduct(doubleOf(c), boundOf(c), doubleOf(d), boundOf(d), second),
  );
  return order ?? compareDecimals(a.value.times(b.value), c.value.times(d.value));
}
