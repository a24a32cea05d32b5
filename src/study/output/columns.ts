/** A study as typed columns, for table libraries and plots: 8 bytes a figure, and a few more a row. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { Aborted, StudyError, StudyFailure } from '../errors.js';
import type { Chunk } from '../run/buffers.js';
import { choiceName, type Header } from './rows.js';

/** Answered rows only: a row without an answer has no placeholder figures. */
export interface ColumnTable {
  readonly length: number;
  /** The row number of each entry. */
  readonly row: Float64Array;
  /** Inputs by path and figures by name. */
  readonly data: Readonly<Record<string, Float64Array>>;
  readonly units: Readonly<Record<string, string>>;
  /** Alternatives by name: an index into `choiceNames`. */
  readonly choices: Readonly<Record<string, Int16Array>>;
  readonly choiceNames: Readonly<Record<string, readonly string[]>>;
  readonly holds: Uint8Array;
  /** An index into `governNames`. */
  readonly governs: Uint16Array;
  readonly governNames: readonly string[];
  readonly unanswered: readonly { readonly row: number; readonly error: StudyFailure }[];
}

/** Stretches of answered rows of a chunk. */
function answeredRuns({ rows, unanswered }: Chunk): readonly { from: number; to: number }[] {
  const stops = [-1, ...[...unanswered.keys()].sort((a, b) => a - b), rows];
  return stops.slice(1).flatMap((to, k) => {
    const from = (stops[k] as number) + 1;
    return to > from ? [{ from, to }] : [];
  });
}

export function columnsOf(
  header: Header,
  chunks: Iterable<Chunk>,
  most: number,
  signal?: AbortSignal,
): Either<Aborted, ColumnTable> {
  const names = [...header.inputs.map(({ path }) => path), ...header.figures.map(({ name }) => name)];
  const columns = names.map(() => new Float64Array(most));
  const choices = header.choices.map(() => new Int16Array(most));
  const [row, holds, governs] = [new Float64Array(most), new Uint8Array(most), new Uint16Array(most)];
  let governNames: readonly string[] = [];
  const unanswered: { row: number; error: StudyFailure }[] = [];
  let length = 0;
  let done = 0;
  for (const chunk of chunks) {
    const sources = [...chunk.inputs, ...chunk.figures];
    governNames = chunk.governNames;
    for (const { from, to } of answeredRuns(chunk)) {
      for (const [k, source] of sources.entries()) columns[k]?.set(source.subarray(from, to), length);
      for (const [k, column] of choices.entries())
        column.set((chunk.choices[k] as Int16Array).subarray(from, to), length);
      holds.set(chunk.holds.subarray(from, to), length);
      governs.set(chunk.governs.subarray(from, to), length);
      for (let i = from; i < to; i += 1) row[length + i - from] = chunk.start + i;
      length += to - from;
    }
    for (const [i, error] of [...chunk.unanswered].sort(([a], [b]) => a - b))
      unanswered.push({ row: chunk.start + i, error });
    done += chunk.rows;
  }
  if (signal?.aborted === true && done < most) return left({ chapter: 'study', tag: 'Aborted', afterRows: done });
  const cut = <A extends Float64Array | Int16Array | Uint8Array | Uint16Array>(array: A): A =>
    length === most ? array : (array.slice(0, length) as A);
  return right({
    length,
    row: cut(row),
    holds: cut(holds),
    governs: cut(governs),
    governNames: [...governNames],
    unanswered,
    data: Object.fromEntries(names.map((name, k) => [name, cut(columns[k] as Float64Array)])),
    units: Object.fromEntries([
      ...header.inputs.map(({ path, unit }) => [path, unit]),
      ...header.figures.map(({ name, unit }) => [name, unit]),
    ]),
    choices: Object.fromEntries(header.choices.map(({ name }, k) => [name, cut(choices[k] as Int16Array)])),
    choiceNames: Object.fromEntries(
      header.choices.map(({ name, choices: named }) => [name, [...named, choiceName(named, -1)]]),
    ),
  });
}

/** The answered rows of a study as typed columns. @example orThrow(toColumns(s)).length === s.count // true */
export const toColumns = (study: {
  readonly columns: () => Either<StudyError, ColumnTable>;
}): Either<StudyError, ColumnTable> => study.columns();
