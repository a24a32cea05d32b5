/** What-if studies: every combination asked for, at the speed of number loops, in exact decimals near every limit. */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../ratings/index.js';
import type { SpecInput } from '../spec/index.js';
import { inShort } from '../units/internal.js';
import type { StudyError, StudyFailure } from './errors.js';
import { type ColumnTable, columnsOf } from './output/columns.js';
import { type Row, rowsOf, sliceOf } from './output/rows.js';
import type { Design } from './plan/design.js';
import { designRefusal } from './plan/design-refusal.js';
import { plan } from './plan/plan-design.js';
import { planRefusal } from './plan/plan-refusal.js';
import type { Axis } from './plan/planned.js';
import { readPlan } from './plan/read-plan.js';
import type { Variation } from './plan/vary.js';
import type { Chunk } from './run/buffers.js';
import { figureNames } from './run/figure-names.js';
import { type Measure, onlyFigures, standardMeasure } from './run/measure.js';
import { type Points, pointsOf } from './run/points.js';
import type { Recording } from './run/recording.js';
import { Runner } from './run/runner.js';
import { checkSample, sampledRows } from './run/sample-check.js';
import type { Summary } from './run/summary.js';
import { type Tapes, tapesFor } from './run/tapes.js';

/** The most rows of a study: what can be counted and addressed without a doubt. */
const mostRows = 1_000_000_000;

export interface StudyPlan {
  /** A spec as JSON. */
  readonly base: SpecInput;
  /** Spec paths and what they take on; or a name and whole alternatives. */
  readonly vary: Readonly<Record<string, Variation>>;
  /** Which of all combinations are run: a grid, a sample, or one at a time. */
  readonly design: Design;
  /** The figures of a row; gross, tongue, payload and the reserve of every check by default. */
  readonly measure?: Measure;
  /** Called after each block of rows. */
  readonly onProgress?: (done: number, of: number) => void;
  /** Called at the end of every run of rows, of a stopped one too: how many have each verdict, how many no answer, and why. */
  readonly onEnd?: (summary: Summary) => void;
  /** Stops a run between two blocks. */
  readonly signal?: AbortSignal;
}

export interface Study {
  /** How many rows there are; known before anything runs. */
  readonly count: number;
  /** The names of whole alternatives, then of varied paths, then of figures. */
  readonly choices: readonly { readonly name: string; readonly choices: readonly string[] }[];
  /** The varied keys of the spec, and the unit of each. */
  readonly inputs: readonly { readonly path: string; readonly unit: string }[];
  /** The levers behind the inputs: linked figures have one together. A distribution has no levels. */
  readonly axes: readonly Axis[];
  /** The figures of a row, and the unit of each. */
  readonly figures: readonly { readonly name: string; readonly unit: string }[];
  /** What is to be said of the plan itself: that it moves axles under a tongue load that was weighed. The notes of a row are those of `assess`. */
  readonly notes: readonly Note[];
  /** Blocks of about a thousand rows in reused columns; the fastest form. */
  readonly chunks: (from?: number, to?: number) => Generator<Chunk, void>;
  /** Records, lazily, in a stable order. An aborted run ends with a row that says so. */
  readonly rows: (from?: number, to?: number) => Generator<Row, void>;
  /** Typed columns of the answered rows, Left `TooManyRows` when they would not fit in memory; the others are listed with their reasons. */
  readonly columns: (from?: number, to?: number) => Either<StudyError, ColumnTable>;
  /** Why one row has no answer, worked out by `assess` when it is asked; `undefined` for a row with an answer. */
  readonly errorAt: (row: number) => StudyFailure | undefined;
  /** The spec of one row as JSON: `assess` of it gives the same answer. Left for a row that is not there. */
  readonly specAt: (row: number) => Either<StudyFailure, unknown>;
}

/**
 * Which of all these combinations hold, and what limits each?
 *
 * The working of `assess` is recorded once for every whole alternative and run in Float64 for every row. A row within
 * 1e-9 of a limit is decided again with exact decimals; a row for which the program takes another branch gets a tape of its
 * own or is assessed from its spec; and a sample of rows is assessed and compared before the study is handed over.
 *
 * @param asked the spec, what varies, the design; a grid varies whole alternatives slowest and the last path fastest
 * @returns Left `UnknownPath`, `UnusableVariation`, `TooManyVariants`, `TapeMismatch`, or the error of the spec itself; a point
 * that cannot be answered is a row with its error
 * @example orThrow(study({ base: spec, vary: { 'cargo.0.front': range('100 in', '140 in', 41) }, design: { kind: 'grid' } })).count // 41
 * @source the formulas are those of `assess`; there is no second copy
 */
export function study(asked: StudyPlan): Either<StudyFailure, Study> {
  const unusable = planRefusal(asked);
  if (unusable !== undefined) return left(unusable);
  const { base, vary, design, measure: wanted = standardMeasure, onProgress, onEnd, signal } = asked;
  const { measure, refusal } = onlyFigures(wanted);
  const read = readPlan(base, vary);
  if (isLeft(read)) return read;
  const { axes, factors, choices, own, notes } = read.right;
  const refused = designRefusal(design, factors);
  if (refused !== undefined) return left(refused);
  const planned = plan(design, choices, axes, factors, own);
  const { count } = planned;
  if (count > mostRows) return left({ chapter: 'study', tag: 'TooManyVariants', count, most: mostRows });
  const tapes = tapesFor(read.right, measure);
  const points = pointsOf(read.right, planned);
  const figures = figureNames(tapes.all(), someRows(tapes, points, count));
  const misfit = refusal();
  if (misfit !== undefined) return left(misfit);
  if (isLeft(figures)) return figures;
  const names = figures.right.map(({ name }) => name);
  const runner = new Runner(read.right, planned, points, tapes, measure, names);
  const mismatch = checkSample(runner, names, count);
  if (mismatch !== undefined) return left(mismatch);
  const chunks = (from = 0, to = count): Generator<Chunk, void> =>
    runner.run(...sliceOf(count, from, to), { onProgress, onEnd, signal });
  const errorAt = (row: number): StudyFailure | undefined => {
    if (!isRow(row, count)) return noSuchRow(row, count);
    const outcome = runner.assessed(row);
    return isLeft(outcome) ? outcome.left : undefined;
  };
  const header = { choices, axes, inputs: factors.map(({ path, unit }) => ({ path, unit })), figures: figures.right };
  const source = { count, ...header, chunks, errorAt };
  return right({
    ...source,
    notes,
    rows: (from = 0, to = count) => rowsOf(source, from, to),
    columns: (from = 0, to = count) => columnsOf(source, from, to),
    specAt: (row) => (isRow(row, count) ? right(points.specAt(row)) : left(noSuchRow(row, count))),
  });
}

/** Recordings of the sampled rows, each made when it is asked for. */
function* someRows(tapes: Tapes, points: Points, count: number): Generator<Recording, void> {
  for (const row of sampledRows(count)) yield tapes.record(points.specAt(row));
}

const isRow = (row: number, count: number): boolean => Number.isInteger(row) && row >= 0 && row < count;

const noSuchRow = (row: number, count: number): StudyError => ({
  chapter: 'study',
  tag: 'UnusableVariation',
  path: 'row',
  found: inShort(row),
  needed: `a whole number from 0 to ${count - 1}`,
});
