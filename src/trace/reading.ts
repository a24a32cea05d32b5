/**
 * One meaning for every operation, for whatever kind of number reads it. The recorded steps use the decimal reading; the
 * replay uses it again; the tests bring a reading of exact fractions; the tape of a study is the reading in Float64.
 */

import { compareDecimals, snap, snappedDifference, snappedSum } from '../units/closeness.js';
import { applyFactor, type Factor } from '../units/convert.js';
import { Decimal, powerOf, workedOut } from '../units/decimal.js';
import type { RoundingMode } from '../units/index.js';
import { roundToStep } from '../units/rounding.js';
import type { Computed, Node } from './node.js';

export interface Reading<T> {
  leaf(value: Decimal): T;
  sum(terms: readonly T[]): T;
  difference(a: T, b: T): T;
  product(a: T, b: T): T;
  quotient(a: T, b: T): T;
  least(terms: readonly T[]): T;
  greatest(terms: readonly T[]): T;
  convert(a: T, factor: Factor): T;
  round(a: T, step: Decimal, mode: RoundingMode): T;
  squareRoot(a: T): T;
  power(a: T, b: T): T;
  /** Angles are degrees. */
  sine(a: T): T;
  cosine(a: T): T;
  tangent(a: T): T;
  arcSine(a: T): T;
  arcTangent(a: T): T;
}

const halfTurn = new Decimal(180);
const pi = workedOut('acos', new Decimal(-1));
const radians = (a: Decimal): Decimal => a.times(pi).div(halfTurn);
const degrees = (a: Decimal): Decimal => a.times(halfTurn).div(pi);

/** What the caller of a step must rule out first; caught here so that no NaN and no Infinity goes on into a working. */
function finite(value: Decimal, step: string): Decimal {
  if (!value.isFinite())
    throw new RangeError(`a recorded ${step} has no finite result: the caller must rule that out first`);
  return value;
}

export const decimalReading: Reading<Decimal> = {
  leaf: (value) => value,
  sum: snappedSum,
  difference: snappedDifference,
  product: (a, b) => a.times(b),
  quotient: (a, b) => finite(a.div(b), 'quotient'),
  least: (terms) => terms.reduce((best, term) => (compareDecimals(term, best) < 0 ? term : best)),
  greatest: (terms) => terms.reduce((best, term) => (compareDecimals(term, best) > 0 ? term : best)),
  convert: (a, factor) => applyFactor(a, factor),
  round: (a, step, mode) => roundToStep(a, step, mode),
  squareRoot: (a) => finite(a.sqrt(), 'square root'),
  power: (a, b) => finite(powerOf(a, b), 'power'),
  // Snapped: the sine of 30 degrees is 0.5, not a figure that differs in the last digit because pi was cut off.
  sine: (a) => snap(workedOut('sin', radians(a))),
  cosine: (a) => snap(workedOut('cos', radians(a))),
  tangent: (a) => snap(finite(workedOut('tan', radians(a)), 'tangent')),
  arcSine: (a) => snap(degrees(finite(workedOut('asin', a), 'arc sine'))),
  arcTangent: (a) => snap(degrees(workedOut('atan', a))),
};

/**
 * Reads one operation. `relabel` changes the unit's name, never the number.
 *
 * @example readOperation(grossWeight.why, [lb(1).value, lb(2).value], decimalReading).toFixed() // 3
 */
export function readOperation<T>(
  node: Pick<Computed, 'operation' | 'factor' | 'rounding'>,
  args: readonly T[],
  reading: Reading<T>,
): T {
  const [a, b] = args as readonly [T, T];
  switch (node.operation) {
    case 'sum':
      return reading.sum(args);
    case 'least':
      return reading.least(args);
    case 'greatest':
      return reading.greatest(args);
    case 'difference':
      return reading.difference(a, b);
    case 'product':
      return reading.product(a, b);
    case 'quotient':
      return reading.quotient(a, b);
    case 'power':
      return reading.power(a, b);
    case 'relabel':
      return a;
    case 'convert':
      return reading.convert(a, node.factor as Factor);
    case 'round': {
      const { step, mode } = node.rounding as NonNullable<Computed['rounding']>;
      return reading.round(a, step, mode);
    }
    case 'squareRoot':
      return reading.squareRoot(a);
    case 'sine':
      return reading.sine(a);
    case 'cosine':
      return reading.cosine(a);
    case 'tangent':
      return reading.tangent(a);
    case 'arcSine':
      return reading.arcSine(a);
    case 'arcTangent':
      return reading.arcTangent(a);
  }
}

/** Reads a whole working, each shared step once. `leafOf` may put another figure in place of a leaf. @example readNode(grossWeight.why, decimalReading, new Map()).toFixed() // 12400 */
export function readNode<T>(
  node: Node,
  reading: Reading<T>,
  memo: Map<Node, T>,
  leafOf?: (leaf: Node) => T | undefined,
): T {
  const found = memo.get(node);
  if (found !== undefined) return found;
  const value =
    node.kind === 'computed'
      ? readOperation(
          node,
          node.of.map((part) => readNode(part, reading, memo, leafOf)),
          reading,
        )
      : (leafOf?.(node) ?? reading.leaf(node.value.value));
  memo.set(node, value);
  return value;
}
