/** Published tables: one printed row is one line, and a row that is not printed is an answer, not a guess. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
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
export function findRow<Row>(table: Table<Row>, keyOf: (row: Row) => string, key: string, near?: (rowKey: string) => number): Either<NotTabulated, Row> {
  const found = table.rows.find((row) => keyOf(row) === key);
  if (found !== undefined) return right(found);
  return left(notTabulated(table.name, key, nearestKeys(table.rows.map(keyOf), near ?? ((other) => editDistance(key, other)))));
}

/** The error of a row that is not printed. @example notTabulated('load ranges', 'Z', ['H', 'G']).tag // NotTabulated */
export const notTabulated = (table: string, asked: string, nearest: readonly string[]): NotTabulated =>
  ({ chapter: 'trace', tag: 'NotTabulated', table, asked, nearest });

/** The three keys nearest to the one asked for. @example nearestKeys(['B', 'C', 'D', 'E'], (key) => editDistance(key, 'D'))[0] // D */
export function nearestKeys(keys: readonly string[], distance: (key: string) => number): readonly string[] {
  return [...new Set(keys)].map((key) => ({ key, far: distance(key) })).sort((a, b) => a.far - b.far).slice(0, 3).map(({ key }) => key);
}

/** How many letters must change to make one word of another; words are cut to 40 letters. @example editDistance('channel', 'chanel') // 1 */
export function editDistance(first: string, second: string): number {
  const [a, b] = [first.slice(0, 40).toLowerCase(), second.slice(0, 40).toLowerCase()];
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}
