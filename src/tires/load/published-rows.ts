/** The published rows of one size, from every table that covers it. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Derived, fromTable, leastOf, type NotTabulated, notTabulated } from '../../trace/index.js';
import { lb, psi, show } from '../../units/index.js';
import { collected, nearestKeys } from '../../units/internal.js';
import { keptFor } from '../designation/cache.js';
import { type Construction, type Designation, isPassenger } from '../designation/designation.js';
import { sizeDistance, whatIsMissing } from '../designation/nearest-size.js';
import { readTireDesignation } from '../designation/read-designation.js';
import { sizeKey } from '../designation/show-designation.js';
import { aliasTable, familyPressureTable, type InflationTable, inflationTables } from '../tables.js';

/** Twin tires on one hub are `dual`; two axles are not. */
export type Fitment = 'single' | 'dual';

/** One printed row. */
export interface PublishedRow {
  readonly table: InflationTable;
  readonly size: string;
  readonly key: string;
  /** Load range letter or load version; empty where none is printed. */
  readonly letter: string;
  readonly construction: Construction;
  readonly pressure: Derived<'psi'>;
  readonly single: Derived<'lb'> | undefined;
  readonly dual: Derived<'lb'> | undefined;
}

const keyOf = (size: string): { key: string; construction: Construction } => {
  const read = readTireDesignation(size);
  return isLeft(read)
    ? { key: size, construction: 'unstated' }
    : { key: sizeKey(read.right), construction: read.right.size.construction };
};

function rowsOf(table: InflationTable): readonly PublishedRow[] {
  return table.rows.map(([size, letter, inPsi, single, dual]) => {
    const key = `${size}${letter === '' ? '' : ` ${letter}`} at ${inPsi} psi`;
    const from = { table: table.name, key, source: table.source };
    const load = (fitment: Fitment, figure: string): Derived<'lb'> | undefined =>
      figure === '' ? undefined : fromTable(`table load ${key}, ${fitment} (${table.name})`, lb(figure), from);
    return {
      table,
      size,
      key,
      letter,
      construction: keyOf(size).construction,
      pressure: fromTable(`table pressure, ${key} (${table.name})`, psi(inPsi), from),
      single: load('single', single),
      dual: load('dual', dual),
    };
  });
}

let bySize: ReadonlyMap<string, readonly PublishedRow[]> | undefined;

/** Made at the first question: reading the sizes of all tables takes longer than one answer. */
function allRows(): ReadonlyMap<string, readonly PublishedRow[]> {
  if (bySize !== undefined) return bySize;
  const rows = new Map<string, PublishedRow[]>();
  for (const row of collected(inflationTables, rowsOf)) {
    const { key } = keyOf(row.size);
    rows.set(key, [...(rows.get(key) ?? []), row]);
  }
  bySize = rows;
  return rows;
}

const radial = (construction: Construction): boolean => construction === 'R' || construction === 'ZR';

/** A row covers its own construction; a chart that covers both covers any, also for one that is not stated. */
const speaksFor = (row: PublishedRow, asked: Construction): boolean =>
  row.table.covers === 'radial and bias' || row.construction === asked || (radial(row.construction) && radial(asked));

/** The key of a size, by way of the aliases that the tables print. */
function searched(d: Designation): string {
  const key = sizeKey(d);
  return aliasTable.rows.find(([written]) => written === key)?.[1] ?? key;
}

function rowsFor(d: Designation, tableName: string | undefined): Either<NotTabulated, readonly PublishedRow[]> {
  const key = searched(d);
  const rows = (allRows().get(key) ?? []).filter(
    (row) => speaksFor(row, d.size.construction) && (tableName === undefined || row.table.name === tableName),
  );
  if (rows.length > 0)
    return right([...rows].sort((a, b) => a.pressure.value.value.comparedTo(b.pressure.value.value)));
  const where = tableName === undefined ? 'tire load and pressure tables' : `tire load and pressure table ${tableName}`;
  const asked = d.size.construction === 'unstated' ? `${key}, construction unstated` : key;
  const printed = [...allRows().keys()];
  const nearest = nearestKeys(printed, (other) => sizeDistance(key, other));
  return left(
    notTabulated(
      where,
      asked,
      nearest.map((size) => nearestRow(size, d.range?.letter)),
      whatIsMissing(key, printed),
    ),
  );
}

/** Of a printed size the row of the letter asked for (the first row, when none is asked for), with its load; else the size. */
function nearestRow(size: string, letter: string | undefined): string {
  const row = (allRows().get(size) ?? []).find(
    (each) => (letter === undefined || each.letter === letter) && each.single !== undefined,
  );
  return row?.single === undefined ? size : `${row.key}, ${show(row.single.value)}`;
}

const ofAllTables = keptFor((d) => rowsFor(d, undefined));

/** Every printed row of this size, least pressure first; of one table when it is named. */
export function publishedRows(d: Designation, tableName?: string): Either<NotTabulated, readonly PublishedRow[]> {
  if (tableName === undefined) return ofAllTables(d);
  const known = inflationTables.map(({ name }) => name);
  if (!known.includes(tableName))
    return left(notTabulated('tire load and pressure tables', `table ${tableName.slice(0, 40)}`, known));
  return rowsFor(d, tableName);
}

/** The letter under which tables list the tire: its load range, or for a passenger tire its load version (SL when unmarked). */
export const tableLetter = (d: Designation): string | undefined =>
  d.range?.letter ?? (isPassenger(d.family) ? (d.version ?? 'SL') : undefined);

/** The pressure that goes with a letter in a family, in psi. A numeric size keeps the pressure it is printed with. */
export const familyPressureOf = (family: string, letter: string): string | undefined =>
  familyPressureTable.rows.find(([of, at]) => of === family && at === letter)?.[2];

const ownPressure = ({ family, size }: Designation, letter: string): string | undefined =>
  size.form === 'numeric' ? undefined : familyPressureOf(family, letter);

/** A table load counts only at the pressure of its own row: rows printed above the family pressure of their letter are not used. */
export const answerableRows = (d: Designation, rows: readonly PublishedRow[]): readonly PublishedRow[] =>
  rows.filter((row) => row.pressure.value.value.lte(ownPressure(d, row.letter) ?? Infinity));

/** The rows that rate a letter: in each table those at its highest pressure for the letter (one print also lists a lower pressure under it). */
export function ratedRows(rows: readonly PublishedRow[], letter: string): readonly PublishedRow[] {
  const own = rows.filter((row) => row.letter === letter);
  return own.filter((row) =>
    own.every((other) => other.table !== row.table || other.pressure.value.value.lte(row.pressure.value.value)),
  );
}

/** Some of the sizes and letters that are printed, for whoever finds none of them. */
export const printedSizes = (rows: readonly PublishedRow[]): readonly string[] =>
  [...new Set(rows.map((row) => row.key))].slice(0, 3);

/** Loads of several prints: the least governs, as a recorded step when there is more than one. */
export const governing = (name: string, loads: readonly Derived<'lb'>[]): Derived<'lb'> | undefined =>
  loads.length <= 1 ? loads[0] : leastOf(name, loads);
