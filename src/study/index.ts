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
export type { Axis } from './plan/planned.js';
export { changed } from './plan/spec-paths.js';
export {
  type Added,
  type AddedOption,
  type Alternatives,
  added,
  alternatives,
  type Chance,
  type Levels,
  type Linked,
  levels,
  linked,
  normal,
  type Range,
  range,
  triangular,
  uniform,
  type Variation,
} from './plan/vary.js';
export type { Chunk } from './run/buffers.js';
export { type Measure, payloadByLimit, standardMeasure } from './run/measure.js';
export { type Summary, summaryText, type Unanswered } from './run/summary.js';
export { tagsOf, verdictCode, verdictNames } from './run/verdict-codes.js';
export { type BuildChance, type Chances, chances } from './sensitivity/chances.js';
export { type Bar, type OneAtATime, oneAtATime } from './sensitivity/one-at-a-time.js';
export { type Goal, pareto } from './sensitivity/pareto.js';
export { type Share, type Spread, sample } from './sensitivity/sample.js';
export { type HoldingInterval, holdingInterval } from './solve/holding-interval.js';
export { type Solution, solveFor, solveForTarget } from './solve/solve.js';
export { type Study, type StudyPlan, study } from './study.js';
export { wordsForStudy } from './words.js';
