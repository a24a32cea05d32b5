/** A study as CSV (RFC 4180) from its columns: units in the headers, no thousands separators. */
import type { Chunk } from '../run/buffers.js';
import { tagsOf, verdictNames } from '../run/verdict-codes.js';
import { failureText } from '../words.js';
import { figureCells, nameCells, textCell } from './cells.js';
import { choiceName, type Header, type Source, stoppedAfter } from './rows.js';

export interface CsvOptions {
  /** A comma for the decimals and a semicolon between fields, as much of Europe writes. */
  readonly decimalComma?: boolean;
  /** The first row; 0 if not said. */
  readonly from?: number;
  /** The row behind the last; all rows if not said. A part that begins behind row 0 has its header too: leave it out when joining. */
  readonly to?: number;
}

const headed = (name: string, unit: string): string => (unit === 'ratio' ? name : `${name} [${unit}]`);

const headerOf = ({ choices, inputs, figures }: Header): readonly string[] => [
  'row',
  ...choices.map(({ name }) => name),
  ...inputs.map(({ path, unit }) => headed(path, unit)),
  ...figures.map(({ name, unit }) => headed(name, unit)),
  'verdict',
  'attention',
  'governs',
  'error',
];

/** Writes the rows of a chunk, one behind the other. */
function writerFor(study: Source, separator: string, decimalComma: boolean): (chunk: Chunk) => string {
  const inputs = study.inputs.map(() => figureCells(decimalComma));
  const figures = study.figures.map(() => figureCells(decimalComma));
  const choices = study.choices.map(({ choices: names }) => nameCells((index) => choiceName(names, index), separator));
  const refused = separator.repeat(study.figures.length + 4);
  let names: readonly string[] = [];
  let tags: readonly string[] = [];
  const governs = nameCells((index) => names[index] ?? '', separator);
  const attention = nameCells((bits) => tagsOf(bits, tags).join(' + '), separator);
  const pointAt = (chunk: Chunk, i: number): string => {
    let line = String(chunk.start + i);
    for (const [k, cell] of choices.entries()) line += separator + cell(chunk.choices[k]?.[i] as number);
    for (const [k, cell] of inputs.entries()) line += separator + cell(chunk.inputs[k]?.[i] as number);
    return line;
  };
  const errorOf = (row: number): string => {
    const error = study.errorAt(row);
    return error === undefined ? '' : textCell(failureText(error), separator);
  };
  return (chunk) => {
    names = chunk.governNames;
    tags = chunk.attentionNames;
    let page = '';
    for (let i = 0; i < chunk.rows; i += 1) {
      let line = pointAt(chunk, i);
      if (chunk.reasons[i] !== 0) line += refused + errorOf(chunk.start + i);
      else {
        for (const [k, cell] of figures.entries()) line += separator + cell(chunk.figures[k]?.[i] as number);
        line += separator + (verdictNames[chunk.verdict[i] as number] as string);
        line += separator + attention(chunk.attention[i] as number);
        line += separator + governs(chunk.governs[i] as number) + separator;
      }
      page += `${line}\r\n`;
    }
    return page;
  };
}

/**
 * A study as CSV text: its header, then about a thousand rows at a time.
 *
 * Columns: row, alternatives, varied paths, figures, verdict, attention (tags), governs, error. A row without an answer has its error and
 * no figures; a stopped run ends with a row that says so. Text that a spreadsheet would run has an apostrophe in front.
 *
 * @param study its rows are run as they are written
 * @example [...toCsv(s)][0].startsWith('row,') // true
 * @source RFC 4180
 */
export function* toCsv(
  study: Source,
  { decimalComma = false, from = 0, to = study.count }: CsvOptions = {},
): Generator<string, void> {
  const separator = decimalComma ? ';' : ',';
  const header = headerOf(study);
  yield `${header.map((name) => textCell(name, separator)).join(separator)}\r\n`;
  const write = writerFor(study, separator, decimalComma);
  let done = 0;
  for (const chunk of study.chunks(from, to)) {
    yield write(chunk);
    done += chunk.rows;
  }
  const stopped = stoppedAfter(study.count, from, to, done);
  if (stopped === undefined) return;
  const error = textCell(failureText(stopped.error), separator);
  yield `${stopped.row}${separator.repeat(header.length - 1)}${error}\r\n`;
}
