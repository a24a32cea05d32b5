/**
 * How a step is kept: a node with what was done, and a figure with its double and the bound of it at once.
 *
 * The decimal is worked out from the node when somebody reads it, by the same reading as a replay. Where the doubles do not
 * tell (a bound that is not finite), it is worked out at once, and a step without a result throws there.
 */
import type { Decimal } from '../units/decimal.js';
import { begin, keep, laterFrom, openStep } from '../units/figure.js';
import type { Unit } from '../units/index.js';
import { ofDecimal } from '../units/internal.js';
import { type Basis, weaker } from './basis.js';
import type { Computed, Derived, Node, Operation } from './node.js';
import { decimalReading, readOperation } from './reading.js';
import type { Source } from './source.js';

/** The name of a result in formulas; null for a step that is written inside its user's formula. */
export type Name = string | null;

const decimalFrom = (node: Pick<Computed, 'operation' | 'of' | 'factor' | 'rounding'>): Decimal =>
  readOperation(
    node,
    node.of.map((part) => part.value.value),
    decimalReading,
  );

/** The decimal of a step, its parts' first; without recursion, so that no working is too long to be read. */
function workOut(first: object): Decimal {
  const waiting = [first as Computed];
  for (let node = waiting.at(-1); node !== undefined; node = waiting.at(-1)) {
    const before = waiting.length;
    if (openStep(node.value, workOut) !== undefined)
      for (const part of node.of) {
        const open = openStep(part.value, workOut);
        if (open !== undefined) waiting.push(open as Computed);
      }
    if (waiting.length > before) continue;
    if (openStep(node.value, workOut) !== undefined) keep(node.value, decimalFrom(node));
    waiting.pop();
  }
  return (first as Computed).value.value;
}

/** A step of any parts. */
export function recorded<U extends Unit>(
  symbol: Name,
  operation: Operation,
  of: readonly Node[],
  basis: Basis,
  unit: U,
  double: number,
  bound: number,
  source: Source | undefined,
  factor?: Computed['factor'],
  rounding?: Computed['rounding'],
): Derived<U> {
  const later = bound < Infinity;
  const value = later
    ? laterFrom(unit, double, bound, workOut)
    : ofDecimal(decimalFrom({ operation, of, factor, rounding }), unit);
  const why: Computed = {
    kind: 'computed',
    operation,
    of,
    value,
    basis,
    symbol: symbol ?? undefined,
    source,
    factor,
    rounding,
  };
  if (later) begin(value, why);
  return { value, why };
}

/** A step of one part. */
export const recordedOfOne = <U extends Unit>(
  symbol: Name,
  operation: Operation,
  a: Derived<Unit>,
  unit: U,
  double: number,
  bound: number,
  source: Source | undefined,
): Derived<U> => recorded(symbol, operation, [a.why], a.why.basis, unit, double, bound, source);

/** A step of two parts. */
export const recordedOfTwo = <U extends Unit>(
  symbol: Name,
  operation: Operation,
  a: Derived<Unit>,
  b: Derived<Unit>,
  unit: U,
  double: number,
  bound: number,
  source: Source | undefined,
): Derived<U> =>
  recorded(symbol, operation, [a.why, b.why], weaker(a.why.basis, b.why.basis), unit, double, bound, source);
