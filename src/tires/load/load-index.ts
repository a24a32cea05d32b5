/** Load index: the number on the sidewall that means a load. */
import { type Either, isLeft, left, map, right } from 'fp-ts/lib/Either.js';
import {
  constant,
  type Derived,
  findRow,
  fromTable,
  type NotTabulated,
  notTabulated,
  over,
  rounded,
  type Table,
} from '../../trace/index.js';
import { kg, lb, quantity } from '../../units/index.js';
import { sources } from '../data/sources.js';
import type { LoadIndexRow } from '../rows.js';
import { loadIndexHighTable, loadIndexTable } from '../tables.js';

/** The load that an index means. */
export interface LoadIndex {
  readonly index: number;
  /** The figure that governs. */
  readonly kg: Derived<'kg'>;
  /** The pounds that lists print with it: not an exact conversion, and not the pounds molded into the tire. */
  readonly lb: Derived<'lb'>;
}

/** 0.4536 kg to a pound, the rounded pound that index lists were printed with. */
const printedPound = constant(quantity('0.4536', 'kg/lb'), 'printed pound', sources.printedPounds);

const last = 200;

function rowOf(index: number): Either<NotTabulated, { row: LoadIndexRow; table: Table<LoadIndexRow> }> {
  if (!Number.isInteger(index) || index < 0 || index > last) {
    const nearest = Math.min(Math.max(Math.round(index) || 0, 0), last);
    return left(notTabulated('load index 0-200', String(index), [String(nearest)]));
  }
  const table = index > 180 ? loadIndexHighTable : loadIndexTable;
  return map((row: LoadIndexRow) => ({ row, table }))(findRow(table, ([key]) => key, String(index)));
}

/**
 * What load does this load index mean?
 *
 * `pounds = round(kg / 0.4536)`, halves up: the rule that reproduces the printed lists (87 is 1,201 lb, where an exact
 * conversion gives 1,202). Kilograms govern.
 *
 * Not the molded load: sidewalls of ST and LT tires carry pounds in steps of 5 or 10 (117 is 2,833 lb here, 2,830 molded), and
 * the molded figure outranks the index. Pounds above index 126 are by the rule only; 181 to 200 rest on one list.
 *
 * @param index the first number behind the size for single tires, the second for dual; 0 to 200
 * @returns kg and printed pounds; Left `NotTabulated` outside 0 to 200
 * @example loadIndex(113) // Right: 1,150 kg, 2,535 lb
 * @source load-index lists, undated, grade C; pounds rule tested on 83 printed values
 */
export function loadIndex(index: number): Either<NotTabulated, LoadIndex> {
  const found = rowOf(index);
  if (isLeft(found)) return found;
  const { row, table } = found.right;
  const load = fromTable(`load at index ${row[0]}`, kg(row[1]), {
    table: table.name,
    key: row[0],
    source: table.source,
  });
  const pounds = over(load, printedPound);
  return right({
    index,
    kg: load,
    lb: rounded(`printed pounds at index ${row[0]}`, pounds, lb(1), 'nearest', sources.printedPounds),
  });
}
