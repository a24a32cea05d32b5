/**
 * The closed table of products. `['lb/ft', 'ft', 'lb']` reads: pounds per foot times feet are pounds. Quotients follow
 * from it. There is no exponent algebra: what is not in the table does not compile.
 */
import type { Unit } from './unit-list.js';

export const products = [
  ['lb/ft', 'ft', 'lb'],
  ['lb/in', 'in', 'lb'],
  ['kg/m', 'm', 'kg'],
  ['lb/ft2', 'ft2', 'lb'],
  ['kg/m2', 'm2', 'kg'],
  ['lb/ft2', 'ft', 'lb/ft'],
  ['lb/ft3', 'ft3', 'lb'],
  ['lb/ft3', 'ft2', 'lb/ft'],
  ['lb/ft3', 'ft', 'lb/ft2'],
  ['lb/in3', 'in3', 'lb'],
  ['lb/in3', 'in2', 'lb/in'],
  ['lb/gal', 'gal', 'lb'],
  ['kg/m3', 'm2', 'kg/m'],
  ['lb', 'in', 'lb*in'],
  ['lb', 'ft', 'lb*ft'],
  ['kg', 'm', 'kg*m'],
  ['kg/lb', 'lb', 'kg'],
  ['lb*in', 'in', 'lb*in2'],
  ['lb', 'in2', 'lb*in2'],
  ['in', 'in', 'in2'],
  ['in2', 'in', 'in3'],
  ['in3', 'in', 'in4'],
  ['in2', 'in2', 'in4'],
  ['ft', 'ft', 'ft2'],
  ['ft2', 'ft', 'ft3'],
  ['ft/s', 'ft/s', 'ft2/s2'],
  ['ft/s2', 'ft', 'ft2/s2'],
  ['lbf/in', 'in', 'lbf'],
  ['lbf/ft', 'ft', 'lbf'],
  ['lbf', 'in', 'lbf*in'],
  ['lbf', 'ft', 'lbf*ft'],
  ['lbf*in', 'in', 'lbf*in2'],
  ['lbf*in2', 'in', 'lbf*in3'],
  ['in3*ft/lb', 'lb/ft', 'in3'],
  ['psi', 'in2', 'lbf'],
  ['psi', 'in3', 'lbf*in'],
  ['psi', 'in4', 'lbf*in2'],
] as const satisfies readonly (readonly [Unit, Unit, Unit])[];

type Row = (typeof products)[number];

/** Anything may be multiplied by a plain number; the table holds the rest, read both ways round. */
type MadeBy<A extends Unit, B extends Unit> =
  | (B extends 'ratio' ? A : never)
  | (A extends 'ratio' ? B : never)
  | Extract<Row, readonly [A, B, Unit]>[2]
  | Extract<Row, readonly [B, A, Unit]>[2];

/** The unit of `A x B`. */
export type Product<A extends Unit, B extends Unit> = MadeBy<A, B>;

/** The units that `A` may be multiplied by. */
export type Multiplier<A extends Unit> = { [B in Unit]: [MadeBy<A, B>] extends [never] ? never : B }[Unit];

/** The unit of `A / B`: the unit that makes `A` when multiplied by `B`. */
export type Quotient<A extends Unit, B extends Unit> =
  | (A extends B ? 'ratio' : never)
  | (B extends 'ratio' ? A : never)
  | Extract<Row, readonly [Unit, B, A]>[0]
  | Extract<Row, readonly [B, Unit, A]>[1];

/** The units that `A` may be divided by. */
export type Divisor<A extends Unit> = { [B in Unit]: [Quotient<A, B>] extends [never] ? never : B }[Unit];

type ByPair = ReadonlyMap<Unit, ReadonlyMap<Unit, Unit>>;

/** A table by its first and second unit, from rows of first, second and result. */
function byPair(rows: readonly (readonly [Unit, Unit, Unit])[]): ByPair {
  const table = new Map<Unit, Map<Unit, Unit>>();
  for (const [first, second, result] of rows) {
    const row = table.get(first) ?? new Map<Unit, Unit>();
    table.set(first, row.set(second, result));
  }
  return table;
}

const made: ByPair = byPair(
  products.flatMap(([first, second, result]) => [[first, second, result] as const, [second, first, result] as const]),
);
const left: ByPair = byPair(
  products.flatMap(([first, second, result]) => [[result, second, first] as const, [result, first, second] as const]),
);

/** The unit of a product; the types have already refused what is not in the table. */
export function unitOfProduct(first: Unit, second: Unit): Unit {
  if (second === 'ratio') return first;
  if (first === 'ratio') return second;
  const unit = made.get(first)?.get(second);
  if (unit === undefined) throw new TypeError(`no product of ${first} and ${second} in the table`);
  return unit;
}

/** The unit of a quotient; the types have already refused what is not in the table. */
export function unitOfQuotient(first: Unit, second: Unit): Unit {
  if (first === second) return 'ratio';
  if (second === 'ratio') return first;
  const unit = left.get(first)?.get(second);
  if (unit === undefined) throw new TypeError(`no quotient of ${first} and ${second} in the table`);
  return unit;
}
