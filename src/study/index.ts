/**
 * What-if studies: vary figures and whole alternatives of a spec, and read every outcome.
 *
 * @module study
 */

export * from './errors.js';
export { type ColumnTable, toColumns } from './output/columns.js';
export { type CsvOptions, toCsv } from './output/csv.js';
export { toJsonLines } from './output/json-lines.js';
export type { Header, Point, Row, Source } from './output/rows.js';
export type { Design } from './plan/design.js';
export { changed } from './plan/spec-paths.js';
export {
  type Alternatives,
  alternatives,
  type Chance,
  type Levels,
  levels,
  normal,
  type Range,
  range,
  triangular,
  uniform,
  type Variation,
} from './plan/vary.js';
export type { Chunk } from './run/buffers.js';
export { type Measure, standardMeasure } from './run/measure.js';
export { type Summary, summaryText, type Unanswered } from './run/summary.js';
export { tagsOf, verdictCode, verdictNames } from './run/verdict-codes.js';
export { type Bar, oneAtATime } from './sensitivity/one-at-a-time.js';
export { type Share, type Spread, sample } from './sensitivity/sample.js';
export { type HoldingInterval, holdingInterval } from './solve/holding-interval.js';
export { type Solution, solveFor } from './solve/solve.js';
export { type Study, type StudyPlan, study } from './study.js';
export { wordsForStudy } from './words.js';
