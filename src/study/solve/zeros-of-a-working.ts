/** Where a working is zero over one input: exactly when it is linear in it, otherwise bracketed. */

import { figureWith, type Node } from '../../trace/index.js';
import { Decimal, zero } from '../../units/internal.js';
import { lineOf } from './straight-line.js';

/** How close a bracketed solution is, in the unit of the input. */
export const bracketWidth = '0.000001';

/** How many steps an input's whole range is scanned in where the working is not linear. */
const scanSteps = 200;

/** The figure of a working with another figure at `path`; NaN where a divisor is zero (a pole). */
export function figureAt(node: Node, path: string, x: Decimal): Decimal {
  try {
    return figureWith(node, new Map([[path, x]]));
  } catch (reason) {
    if (reason instanceof RangeError) return new Decimal(NaN);
    throw reason;
  }
}

export interface Zeros {
  readonly at: readonly Decimal[];
  readonly how: 'exact' | 'bracketed';
}

function bracketed(figure: (x: Decimal) => Decimal, low: Decimal, high: Decimal): readonly Decimal[] {
  // A stretch may end at a pole: evaluate just inside it.
  const from = figure(low).isNaN() ? low.plus(bracketWidth) : low;
  const to = figure(high).isNaN() ? high.minus(bracketWidth) : high;
  const places = Array.from({ length: scanSteps + 1 }, (_, i) => from.plus(to.minus(from).times(i).div(scanSteps)));
  const signs = places.map((place) => figure(place).comparedTo(zero));
  return signs.slice(1).flatMap((after, i) => {
    const sign = signs[i] as number;
    if (sign === after || Number.isNaN(sign) || Number.isNaN(after)) return [];
    let [a, b] = [places[i] as Decimal, places[i + 1] as Decimal];
    while (b.minus(a).gt(bracketWidth)) {
      const middle = a.plus(b).div(2);
      if (figure(middle).comparedTo(zero) === sign) a = middle;
      else b = middle;
    }
    return [sign > 0 ? a : b];
  });
}

/** Zeros of `left - right` between two ends; of `left` itself without a right side. A working that does not vary has none. */
export function zerosOf(left: Node, right: Node | undefined, path: string, low: Decimal, high: Decimal): Zeros {
  const [a, b] = [lineOf(left, path), right === undefined ? { at: zero, slope: zero } : lineOf(right, path)];
  if (a !== undefined && b !== undefined) {
    const slope = a.slope.minus(b.slope);
    const at = slope.isZero() ? undefined : b.at.minus(a.at).div(slope);
    return { at: at === undefined || at.lt(low) || at.gt(high) ? [] : [at], how: 'exact' };
  }
  const figure = (x: Decimal): Decimal =>
    right === undefined ? figureAt(left, path, x) : figureAt(left, path, x).minus(figureAt(right, path, x));
  return { at: bracketed(figure, low, high), how: 'bracketed' };
}
