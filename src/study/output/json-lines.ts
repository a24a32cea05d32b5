/** A study as JSON Lines. */
import { failureText } from '../words.js';
import type { Row } from './rows.js';

/** A study as JSON Lines: one record a line. @example [...toJsonLines(s.rows())].length === s.count // true */
export function* toJsonLines(rows: Iterable<Row>): Generator<string, void> {
  for (const row of rows) yield `${JSON.stringify(row.answered ? row : { ...row, error: failureText(row.error) })}\n`;
}
