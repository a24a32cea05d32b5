/**
 * What-if studies: vary figures and whole alternatives of a spec, and read every outcome.
 *
 * @module study
 */
export type { Chunk } from './chunks.js';
export { type ColumnTable, toColumns } from './columns.js';
export { type CsvOptions, toCsv, toJsonLines } from './csv.js';
export type { Design } from './design.js';
export * from './errors.js';
export type { Header, Point, Row } from './rows.js';
export { bracketWidth, type HoldingInterval, holdingInterval, type Solution, solveFor } from './solve.js';
export { type Bar, oneAtATime, type Spread, sample } from './spread.js';
export { mostRows, type Study, type StudyPlan, study } from './study.js';
export { type Measure, standardMeasure } from './variant.js';
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
} from './vary.js';
export { wordsForStudy } from './words.js';
