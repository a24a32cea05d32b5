/**
 * Tires: designations, load index and range, load and pressure tables, ratings in service, dimensions, placard words.
 *
 * @module tires
 */

export { type DateCode, dateCode } from './designation/date-code.js';
export {
  type Construction,
  type Designation,
  type DiameterSize,
  designationNotes,
  isPassenger,
  type LetterSize,
  type LoadRangeLetter,
  type MetricSize,
  type NumericSize,
  type ServiceDescription,
  type TireFamily,
  type TireSize,
} from './designation/designation.js';
export { readTireDesignation } from './designation/read-designation.js';
export { showDesignation, showSize } from './designation/show-designation.js';
export type * from './designation-errors.js';
export * from './errors.js';
export { type PublishedDiameter, revolutionsPerMile, type TireGeometry, tireGeometry } from './geometry.js';
export { estimateBetweenRows, type LoadBetweenRows } from './load/between-rows.js';
export { estimateLoadAtPressure, type LoadEstimate, type RatedAt } from './load/estimates.js';
export { type LoadAtPressure, loadAtPressure } from './load/load-at-pressure.js';
export { type LoadIndex, loadIndex } from './load/load-index.js';
export { type LoadRange, loadRange, type RangePressure, rangePressure } from './load/load-range.js';
export { type AxleTires, mixedTires } from './load/mixed-tires.js';
export { estimatePMetricLoad } from './load/p-metric-formula.js';
export { type PressureForLoad, pressureForLoad } from './load/pressure-for-load.js';
export type { TableChoice } from './load/printed-steps.js';
export type { Fitment } from './load/published-rows.js';
export type { Service, Tire, TireRating } from './load/tire.js';
export { type TireLoadAsRun, tireLoadAsRun } from './load/tire-load-as-run.js';
export { passengerDivisor, tireLoadRating } from './load/tire-load-rating.js';
export { tirePressureForLoad } from './load/tire-pressure-for-load.js';
export * from './placard.js';
export { checkRimPressure, checkRimWidth, type RimCheck, type RimWidthChecks } from './rim.js';
export type {
  AliasRow,
  DiameterRow,
  FamilyPressureRow,
  InflationRow,
  LoadIndexRow,
  LoadRangeRow,
  SpeedSymbolRow,
} from './rows.js';
export { type SpeedInformation, serviceNotes, speedBands, speedInformation } from './speed/service-conventions.js';
export { type SpeedSymbol, speedSymbol } from './speed/speed-symbol.js';
export {
  aliasTable,
  diameterTables,
  familyPressureTable,
  type InflationTable,
  inflationTables,
  loadIndexHighTable,
  loadIndexTable,
  loadRangeTable,
  speedSymbolTable,
  tiresTables,
} from './tables.js';
export { wordsForTires } from './words.js';
