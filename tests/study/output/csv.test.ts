/** What leaves a study: CSV read back by an independent parser (csv-parse), JSON Lines, typed columns. */

import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import {
  alternatives,
  type CsvOptions,
  levels,
  type Row,
  range,
  tagsOf,
  toCsv,
  toJsonLines,
} from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { study } from '../../helpers/untyped.js';
import { tiltDeck } from '../compared.js';

/** Reads CSV by an independent parser, strictly: records end in CRLF, every record is as long as the first. */
const readCsv = (text: string, separator = ','): string[][] =>
  parse(text, { delimiter: separator, record_delimiter: '\r\n', relax_column_count: false });

const made = rightOf(
  study({
    base: tiltDeck,
    design: { kind: 'grid' },
    vary: {
      'which "build"': alternatives({
        'plain, short': {},
        '=HYPERLINK("x")': { 'trailer.gvwr': '12,000 lb' },
        '+1': {},
        '-1': {},
        '@sum': {},
        '\tTab': {},
        '  =1+1': {},
        '\uff1dSUM(A1)': {},
        '\u00a0\uff20x': {},
        ' plain': {},
        'two\r\nlines': {},
        'semi;colon': {},
        'bad gawr': { 'trailer.axles.0.gawr': '9,000 lb' },
      }),
      'cargo.0.weight': levels('9,000 lb', '9,000.5 lb', '0.0000001 lb'),
      'cargo.0.front': range('100 in', '101 in', 4),
    },
  }),
);
const rows = [...made.rows()];
const header = [
  'row',
  'which "build"',
  'cargo.0.weight [lb]',
  'cargo.0.front [in]',
  'empty weight [lb]',
  'gross weight [lb]',
  'tongue load [lb]',
  'tongue share',
];

describe.each([
  ['with points', ',', false],
  ['with decimal commas', ';', true],
] as const)('CSV %s', (_, separator, decimalComma) => {
  const text = [...toCsv(made, { decimalComma })].join('');
  const [head = [], ...body] = readCsv(text, separator);
  const figure = (field: string | undefined): number => Number(decimalComma ? field?.replace(',', '.') : field);

  it('has one record a row, each as long as the header', () => {
    expect(body.length).toBe(made.count);
    expect(body.filter((record) => record.length !== head.length)).toEqual([]);
  });
  it('has units in its header', () => {
    expect(head.slice(0, 8)).toEqual(header);
    expect(head.slice(-3)).toEqual(['attention', 'governs', 'error']);
  });
  it('gives every figure back, digit for digit', () => {
    body.forEach((record, i) => {
      const row = rows[i] as Row;
      expect(Number(record[0])).toBe(row.row);
      expect([figure(record[2]), figure(record[3])]).toEqual(Object.values(row.inputs));
      if (!row.answered) {
        expect(record.slice(4, -1).every((field) => field === '')).toBe(true);
        expect(record.at(-1)).toMatch(/^trailer\.axles\.0\.gawr: .*GAWR/);
        return;
      }
      for (const [k, { name }] of made.figures.entries())
        expect(figure(record[4 + k])).toBeCloseTo(row.figures[name] as number, 9);
      expect(record.slice(-4)).toEqual([row.verdict, row.attention.join(' + '), row.governs, '']);
    });
    expect(body.some((record) => record.at(-1) !== '')).toBe(true);
  });
  it('has no exponents and no thousands separators', () => {
    const fields = body.flatMap((record) => record.slice(2, 4 + made.figures.length));
    expect(fields.filter((field) => !/^(-?\d+([.,]\d+)?)?$/.test(field))).toEqual([]);
    if (!decimalComma) expect(fields.filter((field) => field.includes(','))).toEqual([]);
  });
  it('makes text harmless that a spreadsheet would run', () => {
    const names = [...new Set(body.map((record) => record[1]))];
    expect(names).toEqual([
      'plain, short',
      '\'=HYPERLINK("x")',
      "'+1",
      "'-1",
      "'@sum",
      "'\tTab",
      "'  =1+1",
      "'\uff1dSUM(A1)",
      "'\u00a0\uff20x",
      ' plain',
      'two\r\nlines',
      'semi;colon',
      'bad gawr',
    ]);
    expect(body.flat().filter((field) => /^[=+@\t\r]/.test(field))).toEqual([]);
  });
});

describe('a slice as CSV', () => {
  const lines = (options: CsvOptions): readonly string[] => readCsv([...toCsv(made, options)].join('')).map(String);
  it('is a part of the whole, under the same header', () => {
    const whole = lines({});
    expect(lines({ from: 3, to: 7 })).toEqual([whole[0], ...whole.slice(4, 8)]);
    expect(lines({ from: made.count })).toEqual([whole[0]]);
  });
  it('ends with a row that says so when it is stopped', () => {
    const stop = new AbortController();
    const base = { base: tiltDeck, vary: { 'cargo.0.weight': range('5,000 lb', '9,000 lb', 3000) } };
    const stopped = rightOf(
      study({ ...base, design: { kind: 'grid' }, signal: stop.signal, onProgress: () => stop.abort() }),
    );
    const records = readCsv([...toCsv(stopped)].join(''));
    expect(records.length).toBe(1 + 1024 + 1);
    expect(records.at(-1)?.[0]).toBe('1024');
    expect(records.at(-1)?.at(-1)).toMatch(/stopped after 1024 rows/);
  });
});

describe('JSON Lines', () => {
  it('has one record a line that reads back as the row', () => {
    const lines = [...toJsonLines(made.rows())];
    expect(lines.every((line) => line.endsWith('\n') && line.indexOf('\n') === line.length - 1)).toBe(true);
    const back = lines.map((line) => JSON.parse(line) as Row);
    expect(back.length).toBe(made.count);
    back.forEach((row, i) => {
      if (row.answered) expect(row).toEqual(rows[i]);
      else expect(row.error).toMatch(/GAWR/);
    });
  });
});

describe('columns', () => {
  const table = rightOf(made.columns());
  it('hold the answered rows, in order, and list the others with their errors', () => {
    const answered = rows.flatMap((row) => (row.answered ? [row] : []));
    expect(table.length).toBe(answered.length);
    expect([...table.row]).toEqual(answered.map(({ row }) => row));
    expect([...table.governs].map((i) => table.governNames[i])).toEqual(answered.map(({ governs }) => governs));
    expect([...table.verdict].map((i) => table.verdictNames[i])).toEqual(answered.map(({ verdict }) => verdict));
    expect([...table.attention].map((bits) => tagsOf(bits, table.attentionNames))).toEqual(
      answered.map(({ attention }) => attention),
    );
    expect(table.attentionNames.length).toBeGreaterThan(0);
    for (const { name } of made.figures)
      expect([...(table.data[name] ?? [])]).toEqual(answered.map(({ figures }) => figures[name]));
    const refused = rows.flatMap((row) => (row.answered ? [] : [row]));
    expect([...table.unanswered.row]).toEqual(refused.map(({ row }) => row));
    expect([...table.unanswered.reason].map((i) => table.reasonNames[i])).toEqual(refused.map(({ reason }) => reason));
    expect(refused.map(({ reason }) => reason)).toContain('contradiction: trailer.axles.0.gawr');
    for (const row of refused) expect(made.errorAt(row.row)).toEqual(row.error);
    expect(
      Object.values(table.data)
        .flatMap((column) => [...column])
        .every(Number.isFinite),
    ).toBe(true);
  });
  it('take at most 8 bytes a figure and 20 more a row', () => {
    const arrays = [
      table.row,
      table.verdict,
      table.attention,
      table.governs,
      ...Object.values(table.data),
      ...Object.values(table.choices),
    ];
    const bytes = arrays.reduce((total, array) => total + array.byteLength, 0);
    expect(bytes / table.length).toBeLessThanOrEqual(8 * Object.keys(table.data).length + 20);
    expect(arrays.filter((array) => array.length !== table.length)).toEqual([]);
  });
});
