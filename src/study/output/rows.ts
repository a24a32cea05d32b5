/** A study as records, one a row, made when they are asked for. */
import type { AssessmentVerdict } from '../../assessment/index.js';
import type { Aborted, StudyFailure } from '../errors.js';
import type { Chunk } from '../run/buffers.js';
import { tagsOf, verdictNames } from '../run/verdict-codes.js';

/** What the columns of a study are called, and their units. */
export interface Header {
  /** The names of whole alternatives, and what each may be. */
  readonly choices: readonly { readonly name: string; readonly choices: readonly string[] }[];
  /** The varied keys of the spec, and the unit of each. */
  readonly inputs: readonly { readonly path: string; readonly unit: string }[];
  /** The figures of a row, and the unit of each. */
  readonly figures: readonly { readonly name: string; readonly unit: string }[];
}

/** A study as its outputs see it: what its columns are called, its rows in blocks, the errors of those without an answer. */
export interface Source extends Header {
  /** How many rows there are. */
  readonly count: number;
  /** The rows in blocks, of all or from one row to another. */
  readonly chunks: (from?: number, to?: number) => Iterable<Chunk>;
  /** Why a row has no answer; `undefined` for one that has. */
  readonly errorAt: (row: number) => StudyFailure | undefined;
}

/** The point of a row: its number, the alternatives chosen, the varied figures by path. */
export interface Point {
  /** The number of the row, from zero. */
  readonly row: number;
  /** Which alternative was taken, by name. */
  readonly choices: Readonly<Record<string, string>>;
  /** The varied figures by key, in the units of the header. */
  readonly inputs: Readonly<Record<string, number>>;
}

export type Row =
  | (Point & {
      readonly answered: true;
      readonly figures: Readonly<Record<string, number>>;
      readonly verdict: AssessmentVerdict;
      /** The tags of what asks attention. */
      readonly attention: readonly string[];
      /** The check closest to its limit, or all that tie, in the order of the checks. */
      readonly governs: string;
    })
  | (Point & {
      readonly answered: false;
      /** The tag of the error and the place it names. */
      readonly reason: string;
      /** The error with its figures: worked out when it is first read, as it takes a whole `assess`. */
      readonly error: StudyFailure;
    });

/** The name of a choice; `as specified` when none was taken. */
export const choiceName = (names: readonly string[], index: number): string =>
  index < 0 ? 'as specified' : (names[index] ?? '');

/** The row and the error with which a run ends that was stopped; `undefined` when all of its rows came. */
export function stoppedAfter(
  count: number,
  from: number,
  to: number,
  done: number,
): { readonly row: number; readonly error: Aborted } | undefined {
  const [first, end] = sliceOf(count, from, to);
  return first + done < end
    ? { row: first + done, error: { chapter: 'study', tag: 'Aborted', afterRows: done } }
    : undefined;
}

/** A slice of rows, within the study: whole rows only. */
export const sliceOf = (count: number, from: number, to: number): readonly [first: number, end: number] => [
  Math.max(0, Math.ceil(from)),
  Math.min(count, Math.ceil(to)),
];

export function* rowsOf(source: Source, from: number, to: number): Generator<Row, void> {
  let done = 0;
  for (const chunk of source.chunks(from, to)) {
    for (let i = 0; i < chunk.rows; i += 1) yield rowOf(source, chunk, i);
    done += chunk.rows;
  }
  const stopped = stoppedAfter(source.count, from, to, done);
  if (stopped !== undefined) yield { ...stopped, choices: {}, inputs: {}, answered: false, reason: 'Aborted' };
}

/** A row without an answer, whose error is made once, when it is first read. */
function refusedRow(point: Point, reason: string, errorAt: (row: number) => StudyFailure | undefined): Row {
  let made: StudyFailure | undefined;
  return {
    ...point,
    answered: false,
    reason,
    get error(): StudyFailure {
      made ??= errorAt(point.row) ?? {
        chapter: 'study',
        tag: 'TapeMismatch',
        row: point.row,
        column: 'answer',
        tape: reason,
        exact: 'answered',
      };
      return made;
    },
  };
}

function rowOf({ choices, inputs, figures, errorAt }: Source, chunk: Chunk, i: number): Row {
  const point = {
    row: chunk.start + i,
    choices: Object.fromEntries(
      choices.map(({ name, choices: names }, k) => [name, choiceName(names, chunk.choices[k]?.[i] ?? -1)]),
    ),
    inputs: Object.fromEntries(inputs.map(({ path }, k) => [path, chunk.inputs[k]?.[i] as number])),
  };
  const reason = chunk.reasons[i] as number;
  if (reason !== 0) return refusedRow(point, chunk.reasonNames[reason] as string, errorAt);
  return {
    ...point,
    answered: true,
    verdict: verdictNames[chunk.verdict[i] as number] as AssessmentVerdict,
    attention: tagsOf(chunk.attention[i] as number, chunk.attentionNames),
    governs: chunk.governNames[chunk.governs[i] as number] as string,
    figures: Object.fromEntries(figures.map(({ name }, k) => [name, chunk.figures[k]?.[i] as number])),
  };
}
