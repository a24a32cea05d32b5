/** A study as CSV (RFC 4180): units in the headers, no thousands separators, text that a spreadsheet would run made harmless. */
import { failureText } from '../words.js';
import type { Header, Row } from './rows.js';

export interface CsvOptions {
  /** A comma for the decimals and a semicolon between fields, as much of Europe writes. */
  readonly decimalComma?: boolean;
}

/** A field: quoted when it must be, and with an apostrophe before a first character that a spreadsheet would take for a formula. */
function textField(text: string, separator: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return harmless.includes(separator) || /["\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

const headed = (name: string, unit: string): string => (unit === 'ratio' ? name : `${name} [${unit}]`);

/**
 * A study as lines of CSV, the header first.
 *
 * Columns: row, alternatives, varied paths, figures, holds (yes or no), governs, error. An unanswered row has its error and no figures.
 *
 * @param header the study itself
 * @param rows its rows
 * @example [...toCsv(s, s.rows())][0].startsWith('row,') // true
 * @source RFC 4180
 */
export function* toCsv(
  header: Header,
  rows: Iterable<Row>,
  { decimalComma = false }: CsvOptions = {},
): Generator<string, void> {
  const separator = decimalComma ? ';' : ',';
  const number = (x: number): string => (decimalComma ? plain(x).replace('.', ',') : plain(x));
  const text = (field: string): string => textField(field, separator);
  const names = [
    'row',
    ...header.choices.map(({ name }) => name),
    ...header.inputs.map(({ path, unit }) => headed(path, unit)),
    ...header.figures.map(({ name, unit }) => headed(name, unit)),
    'holds',
    'governs',
    'error',
  ];
  yield `${names.map(text).join(separator)}\r\n`;
  for (const row of rows) {
    const point = [
      String(row.row),
      ...header.choices.map(({ name }) => text(row.choices[name] ?? '')),
      ...header.inputs.map(({ path }) => fieldOf(row.inputs[path], number)),
    ];
    const answer = row.answered
      ? [
          ...header.figures.map(({ name }) => fieldOf(row.figures[name], number)),
          row.holds ? 'yes' : 'no',
          text(row.governs),
          '',
        ]
      : [...header.figures.map(() => ''), '', '', text(failureText(row.error))];
    yield `${[...point, ...answer].join(separator)}\r\n`;
  }
}

const fieldOf = (x: number | undefined, number: (x: number) => string): string => (x === undefined ? '' : number(x));

/** Digits without an exponent. */
const plain = (x: number): string => (/e/.test(String(x)) ? x.toFixed(12).replace(/\.?0+$/, '') : String(x));

/** A study as JSON Lines: one record a line. @example [...toJsonLines(s.rows())].length === s.count // true */
export function* toJsonLines(rows: Iterable<Row>): Generator<string, void> {
  for (const row of rows) yield `${JSON.stringify(row.answered ? row : { ...row, error: failureText(row.error) })}\n`;
}
