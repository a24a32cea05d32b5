/** A study as typed columns, for table libraries and plots: 8 bytes a figure, and a few more a row. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { AssessmentVerdict } from '../../assessment/index.js';
import type { Aborted, StudyError, TooManyRows } from '../errors.js';
import type { Chunk } from '../run/buffers.js';
import { verdictNames } from '../run/verdict-codes.js';
import { choiceName, type Source, sliceOf, stoppedAfter } from './rows.js';

/** Answered rows only: a row without an answer has no placeholder figures. */
export interface ColumnTable {
  /** How many rows have an answer. */
  readonly length: number;
  /** The row number of each entry. */
  readonly row: Float64Array;
  /** Inputs by path and figures by name. */
  readonly data: Readonly<Record<string, Float64Array>>;
  /** The unit of each column of `data`, by the same name. */
  readonly units: Readonly<Record<string, string>>;
  /** Alternatives by name: an index into `choiceNames`. */
  readonly choices: Readonly<Record<string, Int16Array>>;
  /** The alternatives of each name, in the order of their index. */
  readonly choiceNames: Readonly<Record<string, readonly string[]>>;
  /** An index into `verdictNames`. */
  readonly verdict: Uint8Array;
  /** The verdicts, in the order of their index. */
  readonly verdictNames: readonly AssessmentVerdict[];
  /** The attention notes, as bits: bit k is `attentionNames[k]`. */
  readonly attention: Uint32Array;
  /** The tags of what asks attention, in the order of their bits. */
  readonly attentionNames: readonly string[];
  /** An index into `governNames`. */
  readonly governs: Uint16Array;
  /** The checks closest to their limit, in the order of their index. */
  readonly governNames: readonly string[];
  /** The rows without an answer: their numbers and, for each, an index into `reasonNames`. `errorAt` of the study gives the error. */
  readonly unanswered: { readonly row: Float64Array; readonly reason: Uint16Array };
  /** Why rows have no answer, in the order of their index. */
  readonly reasonNames: readonly string[];
}

/** The most memory that a table of columns takes: what a common process has, whatever this one has left. */
const mostBytes = 2e9;

/** Row number, verdict, attention, governing check, and a number and a reason should it have no answer; then its own columns. */
const bytesOfRow = ({ inputs, figures, choices }: Source): number =>
  8 + 1 + 4 + 2 + 10 + 8 * (inputs.length + figures.length) + 2 * choices.length;

/** Stretches of answered rows of a chunk. */
function answeredRuns({ rows, reasons }: Chunk): readonly { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (let i = 0; i < rows; i += 1) {
    if (reasons[i] !== 0) continue;
    const last = runs.at(-1);
    if (last?.to === i) last.to = i + 1;
    else runs.push({ from: i, to: i + 1 });
  }
  return runs;
}

export function columnsOf(source: Source, from: number, to: number): Either<Aborted | TooManyRows, ColumnTable> {
  const { inputs, figures, choices: named } = source;
  const [first, last] = sliceOf(source.count, from, to);
  const most = Math.max(0, last - first);
  const fit = Math.floor(mostBytes / bytesOfRow(source));
  if (most > fit) return left({ chapter: 'study', tag: 'TooManyRows', count: most, most: fit });
  const names = [...inputs.map(({ path }) => path), ...figures.map(({ name }) => name)];
  const columns = names.map(() => new Float64Array(most));
  const choices = named.map(() => new Int16Array(most));
  const [row, verdict, governs] = [new Float64Array(most), new Uint8Array(most), new Uint16Array(most)];
  const attention = new Uint32Array(most);
  let governNames: readonly string[] = [];
  let attentionNames: readonly string[] = [];
  let reasonNames: readonly string[] = [''];
  const refused = { row: new Float64Array(most), reason: new Uint16Array(most) };
  let none = 0;
  let length = 0;
  let done = 0;
  for (const chunk of source.chunks(from, to)) {
    const sources = [...chunk.inputs, ...chunk.figures];
    ({ governNames, attentionNames } = chunk);
    for (const { from, to } of answeredRuns(chunk)) {
      for (const [k, source] of sources.entries()) columns[k]?.set(source.subarray(from, to), length);
      for (const [k, column] of choices.entries())
        column.set((chunk.choices[k] as Int16Array).subarray(from, to), length);
      verdict.set(chunk.verdict.subarray(from, to), length);
      attention.set(chunk.attention.subarray(from, to), length);
      governs.set(chunk.governs.subarray(from, to), length);
      for (let i = from; i < to; i += 1) row[length + i - from] = chunk.start + i;
      length += to - from;
    }
    reasonNames = chunk.reasonNames;
    for (let i = 0; i < chunk.rows; i += 1) {
      if (chunk.reasons[i] === 0) continue;
      refused.row[none] = chunk.start + i;
      refused.reason[none] = chunk.reasons[i] as number;
      none += 1;
    }
    done += chunk.rows;
  }
  const stopped = stoppedAfter(source.count, from, to, done);
  if (stopped !== undefined) return left(stopped.error);
  const cut = <A extends Float64Array | Int16Array | Uint8Array | Uint16Array | Uint32Array>(array: A): A =>
    length === most ? array : (array.slice(0, length) as A);
  return right({
    length,
    row: cut(row),
    verdict: cut(verdict),
    verdictNames: [...verdictNames],
    attention: cut(attention),
    attentionNames: [...attentionNames],
    governs: cut(governs),
    governNames: [...governNames],
    unanswered: { row: refused.row.slice(0, none), reason: refused.reason.slice(0, none) },
    reasonNames: [...reasonNames],
    data: Object.fromEntries(names.map((name, k) => [name, cut(columns[k] as Float64Array)])),
    units: Object.fromEntries([
      ...inputs.map(({ path, unit }) => [path, unit]),
      ...figures.map(({ name, unit }) => [name, unit]),
    ]),
    choices: Object.fromEntries(named.map(({ name }, k) => [name, cut(choices[k] as Int16Array)])),
    choiceNames: Object.fromEntries(named.map(({ name, choices: taken }) => [name, [...taken, choiceName(taken, -1)]])),
  });
}

/** The answered rows of a study as typed columns. @example orThrow(toColumns(s)).length === s.count // true */
export const toColumns = (study: {
  readonly columns: () => Either<StudyError, ColumnTable>;
}): Either<StudyError, ColumnTable> => study.columns();
