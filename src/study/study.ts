/** What-if studies: every combination asked for, at the speed of number loops, exact wherever a limit is near. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { assess } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import { uniformAt } from './chance.js';
import { type Chunk, Chunks } from './chunks.js';
import { type ColumnTable, columnsOf } from './columns.js';
import { type Design, plan } from './design.js';
import type { StudyError } from './errors.js';
import { resolve } from './resolve.js';
import { type Row, rowsOf } from './rows.js';
import { checkSample } from './sample-check.js';
import { type Measure, standardMeasure } from './variant.js';
import type { Variation } from './vary.js';

/** The most rows of a study: what can be counted and addressed without a doubt. */
export const mostRows = 1_000_000_000;

export interface StudyPlan {
  /** A spec as JSON. */
  readonly base: unknown;
  /** Spec paths and what they take on; or a name and whole alternatives. */
  readonly vary: Readonly<Record<string, Variation>>;
  readonly design: Design;
  /** The figures of a row; gross, tongue, payload and what is left of every check when nothing is said. */
  readonly measure?: Measure;
  readonly onProgress?: (done: number, of: number) => void;
  readonly signal?: AbortSignal;
}

export interface Study {
  /** How many rows there are; known before anything runs. */
  readonly count: number;
  /** The names of whole alternatives, then of varied paths, then of figures. */
  readonly choices: readonly { readonly name: string; readonly choices: readonly string[] }[];
  readonly inputs: readonly { readonly path: string; readonly unit: string }[];
  readonly figures: readonly { readonly name: string; readonly unit: string }[];
  /** Blocks of about a thousand rows in reused columns; for whoever wants the speed. */
  readonly chunks: (from?: number, to?: number) => Generator<Chunk, void>;
  /** Records, lazily, in a stable order. An aborted run ends with a row that says so. */
  readonly rows: (from?: number, to?: number) => Generator<Row, void>;
  /** Typed columns of the answered rows; the others are listed with their errors. */
  readonly columns: (from?: number, to?: number) => Either<StudyError, ColumnTable>;
  /** The spec of one row as JSON: `assess` of it gives the same answer. Left for a row that is not there. */
  readonly specAt: (row: number) => Either<TrailerError, unknown>;
}

/**
 * Which of all these combinations hold, and what limits each?
 *
 * The working of `assess` is recorded once for every whole alternative and read in Float64 for every row; a row that stands
 * within 1e-9 of a limit is decided again with exact decimals, a row for which the program would have gone another way is
 * assessed from its spec, and a sample of rows is assessed and compared before the study is handed over.
 *
 * @param plan the spec, what varies, the design; a grid varies whole alternatives slowest and the last path fastest
 * @returns Left `UnknownPath`, `UnusableVariation`, `TooManyVariants`, `TapeMismatch`, or the error of the spec itself; a point
 * that cannot be answered is a row with its error
 * @example orThrow(study({ base: spec, vary: { 'cargo.0.front': range('100 in', '140 in', 41) }, design: { kind: 'grid' } })).count // 41
 * @source the formulas are those of `assess`; there is no second copy
 */
export function study({
  base,
  vary,
  design,
  measure = standardMeasure,
  onProgress,
  signal,
}: StudyPlan): Either<TrailerError, Study> {
  const resolved = resolve(base, vary, measure);
  if (isLeft(resolved)) return resolved;
  const { factors, choices, own } = resolved.right;
  const refused = refusal(design, factors);
  if (refused !== undefined) return left(refused);
  const planned = plan(design, choices, factors, own);
  if (planned.count > mostRows)
    return left({ chapter: 'study', tag: 'TooManyVariants', count: planned.count, most: mostRows });
  const chunks = new Chunks(resolved.right, planned, measure);
  const names = chunks.figureNames();
  if (isLeft(names)) return names;
  const sample = Array.from({ length: Math.min(24, planned.count) }, (_, i) =>
    Math.floor(uniformAt(20_011, i, 0) * planned.count),
  );
  const mismatch = checkSample(
    chunks,
    sample,
    names.right.map(({ name }) => name),
    assess,
    measure,
  );
  if (mismatch !== undefined) return left(mismatch);
  const [first, last] = [
    (from: number) => Math.max(0, Math.ceil(from)),
    (to: number) => Math.min(planned.count, Math.ceil(to)),
  ];
  const run = (from = 0, to = planned.count): Generator<Chunk, void> =>
    chunks.run(
      first(from),
      last(to),
      names.right.map(({ name }) => name),
      onProgress,
      signal,
    );
  const header = { choices, inputs: factors.map(({ path, unit }) => ({ path, unit })), figures: names.right };
  return right({
    count: planned.count,
    ...header,
    chunks: run,
    rows: (from = 0, to = planned.count) => rowsOf(header, run(from, to), first(from), last(to), signal),
    columns: (from = 0, to = planned.count) =>
      columnsOf(header, run(from, to), Math.max(0, last(to) - first(from)), signal),
    specAt: (row) =>
      isRow(row, planned.count)
        ? chunks.specAt(row)
        : left({
            chapter: 'study',
            tag: 'UnusableVariation',
            path: 'row',
            found: String(row),
            needed: `a whole number from 0 to ${planned.count - 1}`,
          }),
  });
}

const isRow = (row: number, count: number): boolean => Number.isInteger(row) && row >= 0 && row < count;

function refusal(design: Design, factors: readonly { path: string; levels: number }[]): StudyError | undefined {
  if (design.kind === 'latin hypercube' || design.kind === 'monte carlo') {
    if (!Number.isInteger(design.runs) || design.runs < 1)
      return {
        chapter: 'study',
        tag: 'UnusableVariation',
        path: 'design.runs',
        found: String(design.runs),
        needed: 'a whole number of runs',
      };
    if (!Number.isInteger(design.seed))
      return {
        chapter: 'study',
        tag: 'UnusableVariation',
        path: 'design.seed',
        found: String(design.seed),
        needed: 'a whole number',
      };
    return undefined;
  }
  const chance = factors.find(({ levels }) => levels === 0);
  return (
    chance && {
      chapter: 'study',
      tag: 'UnusableVariation',
      path: chance.path,
      found: 'a distribution',
      needed: 'levels or a range for this design, or a sampled design',
    }
  );
}
