/** Published tables: one printed row is one line, and a row that is not printed is an answer, not a guess. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { editDistance, nearestKeys } from '../units/internal.js';
import type { NotTabulated } from './errors.js';
import type { Source } from './source.js';

/** Rows with their source. `authoritative` names the column that governs where two columns say the same thing. */
export interface Table<Row> {
  readonly name: string;
  readonly source: Source;
  readonly authoritative: string;
  readonly rows: readonly Row[];
}

/**
 * The row with this key.
 *
 * @param near how far a row's key is from the one asked for, to name the nearest rows when there is none
 * @example findRow({ name: 'letters', source: statics, authoritative: 'letter', rows: ['C', 'D'] }, (row) => row, 'D') // Right D
 */
export function findRow<Row>(
  table: Table<Row>,
  keyOf: (row: Row) => string,
  key: string,
  near?: (rowKey: string) => number,
): Either<NotTabulated, Row> {
  const found = table.rows.find((row) => keyOf(row) === key);
  if (found !== undefined) return right(found);
  return left(
    notTabulated(table.name, key, nearestKeys(table.rows.map(keyOf), near ?? ((other) => editDistance(key, other)))),
  );
}

/** An error repeats at most this much of a key, which may come from a caller's file. */
const mostAsked = 120;

/** The error of a row that is not printed; `instead` says what to do about it. @example notTabulated('load ranges', 'Z', ['H', 'G']).tag // NotTabulated */
export const notTabulated = (
  table: string,
  asked: string,
  nearest: readonly string[],
  instead?: string,
): NotTabulated => ({
  chapter: 'trace',
  tag: 'NotTabulated',
  table,
  asked: asked.slice(0, mostAsked),
  nearest,
  ...(instead !== undefined && { instead }),
});
