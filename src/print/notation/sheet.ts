/** A working as a live spreadsheet: change an input, and every step and check follows. */
import { collected, harmless } from '../../units/internal.js';
import type { Dialect, Place } from './cell-formulas.js';
import { type Cell, type Sheet, type SheetContent, sheetsOf } from './cells.js';
import { xmlText } from './mathml.js';

/** The kinds of file: one table of formulas separated by commas, or a workbook of three sheets (flat OpenDocument). */
export type SheetForm = 'csv' | 'fods';

const columnName = (column: number): string => String.fromCharCode(65 + column);
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

function csvCell(cell: Cell, dialect: Dialect): string {
  switch (cell.kind) {
    case 'text':
      return quoted(harmless(cell.text));
    case 'number':
      return cell.digits;
    case 'formula':
      return quoted(`=${cell.write(dialect)}`);
  }
}

/** One table: the sheets under one another, an empty row between them. */
function csv(sheets: readonly Sheet[]): string {
  const offsets = new Map<string, number>();
  let next = 0;
  for (const { name, rows } of sheets) {
    offsets.set(name, next);
    next += rows.length + 1;
  }
  const at = ({ sheet, row, column }: Place): string => `${columnName(column)}${(offsets.get(sheet) ?? 0) + row + 1}`;
  const dialect: Dialect = { at, separator: ',' };
  return sheets
    .map(({ rows }) => rows.map((cells) => `${cells.map((cell) => csvCell(cell, dialect)).join(',')}\r\n`).join(''))
    .join('\r\n');
}

const openFormula: Dialect = {
  at: ({ sheet, row, column }, from) => `[${sheet === from ? '' : sheet}.${columnName(column)}${row + 1}]`,
  separator: ';',
};

function fodsCell(cell: Cell): string {
  switch (cell.kind) {
    case 'text':
      return `<table:table-cell office:value-type="string"><text:p>${xmlText(cell.text)}</text:p></table:table-cell>`;
    case 'number':
      return `<table:table-cell office:value-type="float" office:value="${cell.digits}"/>`;
    case 'formula':
      return `<table:table-cell table:formula="of:=${xmlText(cell.write(openFormula))}"/>`;
  }
}

const namespaces = ['office', 'table', 'text']
  .map((name) => `xmlns:${name}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`)
  .join(' ');

const fods = (sheets: readonly Sheet[]): string =>
  [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<office:document ${namespaces} xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">`,
    '<office:body><office:spreadsheet>',
    ...collected(sheets, ({ name, rows }) => [
      `<table:table table:name="${xmlText(name)}">`,
      ...rows.map((cells) => `<table:table-row>${cells.map(fodsCell).join('')}</table:table-row>`),
      '</table:table>',
    ]),
    '</office:spreadsheet></office:body></office:document>',
    '',
  ].join('\n');

/**
 * How do I hand this working to somebody with a spreadsheet?
 *
 * Inputs are numbers, steps and checks are formulas over them: change an input and all that follows from it changes.
 * `fods` is one workbook with the sheets inputs, steps and checks; `csv` has the three under one another, with commas
 * between arguments, as spreadsheets in English read them.
 *
 * A spreadsheet counts in doubles: its figures agree with these to about fifteen digits, and a tie counts as within. What
 * depends on a comparison (which table row, which rule) is not asked again: that is what `assess` is for.
 *
 * @param content figures with their working, and checks
 * @param form `csv` or `fods`
 * @returns the text of the file, the same for the same content; texts from outside never become formulas
 * @example toSheet({ figures: [grossWeight] }, 'csv').split('\r\n')[0] // "input","figure","unit","from"
 * @source each step and input carries its own
 */
export function toSheet(content: SheetContent, form: SheetForm): string {
  const sheets = sheetsOf(content);
  return form === 'csv' ? csv(sheets) : fods(sheets);
}
