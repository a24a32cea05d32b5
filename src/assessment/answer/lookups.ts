/** Looked-up figures against the tables that this library ships. */
import { axlesTables } from '../../axles/index.js';
import { loadTables } from '../../load/index.js';
import { membersTables } from '../../members/index.js';
import { rulesTables } from '../../rules/index.js';
import { tiresTables } from '../../tires/index.js';
import { towingTables } from '../../towing/index.js';
import type { Table } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { LookedUpNode } from './node-shape.js';
import { plus, type Rational, rational, rationalOf, snappedOrder } from './rational.js';

export const shipped: readonly Table<unknown>[] = [
  ...tiresTables,
  ...membersTables,
  ...axlesTables,
  ...loadTables,
  ...towingTables,
  ...rulesTables,
];

/** Every text of a row, its parts included. */
function cellsOf(row: unknown): readonly string[] {
  if (typeof row === 'string') return [row];
  if (typeof row === 'number') return [String(row)];
  return typeof row === 'object' && row !== null ? collected(Object.values(row), cellsOf) : [];
}

/** `7 1/4`, `1/4` and plain digits. */
function figureIn(cell: string): Rational | undefined {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(cell);
  if (mixed === null) return rationalOf(cell);
  const [, whole = '0', top = '', bottom = ''] = mixed;
  return bottom === '0' ? undefined : plus(rational(BigInt(whole)), rational(BigInt(top), BigInt(bottom)));
}

/** What the shipped tables say to a looked-up figure. */
export type LookUp = 'agrees' | 'differs' | 'not found';

const cells = new Map<Table<unknown>, readonly (readonly string[])[]>();

/** The rows of a table as texts, made at the first question: the tables never change. */
function rowsOf(table: Table<unknown>): readonly (readonly string[])[] {
  const rows = cells.get(table) ?? table.rows.map(cellsOf);
  cells.set(table, rows);
  return rows;
}

/** The rows that hold the key, or every word of it that any row holds. */
function rowsFor(table: Table<unknown>, key: string): readonly (readonly string[])[] {
  const rows = rowsOf(table);
  const whole = rows.filter((row) => row.includes(key));
  if (whole.length > 0) return whole;
  const words = key.split(/[\s,]+/).filter((word) => rows.some((row) => row.includes(word)));
  return words.length === 0 ? [] : rows.filter((row) => words.every((word) => row.includes(word)));
}

function isFigure(cell: string, figure: Rational): boolean {
  const printed = figureIn(cell);
  return printed !== undefined && snappedOrder(printed, figure) === 0;
}

/** Does the table of this name print this figure in this row? */
export function lookUp({ table: name, key }: LookedUpNode, figure: Rational): LookUp {
  const table = shipped.find((each) => each.name === name);
  const rows = table === undefined ? [] : rowsFor(table, key);
  if (rows.length === 0) return 'not found';
  return rows.some((row) => row.some((cell) => isFigure(cell, figure))) ? 'agrees' : 'differs';
}
