/**
 * Tires: designations, load index and range, load and pressure tables, ratings in service, dimensions, placard words.
 *
 * @module tires
 */
export { estimateBetweenRows, type LoadBetweenRows } from './between-rows.js';
export { type DateCode, dateCode } from './date-code.js';
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
} from './designation.js';
export * from './errors.js';
export { estimateLoadAtPressure, type LoadEstimate, type RatedAt } from './estimate.js';
export { type PublishedDiameter, revolutionsPerMile, type TireGeometry, tireGeometry } from './geometry.js';
export {
  type LoadAtPressure,
  loadAtPressure,
  type PressureForLoad,
  pressureForLoad,
  type TableChoice,
} from './load-at-pressure.js';
export { type LoadIndex, loadIndex } from './load-index.js';
export { type LoadRange, loadRange, type RangePressure, rangePressure } from './load-range.js';
export { type AxleTires, mixedTires } from './mixed-tires.js';
export { estimatePMetricLoad } from './p-metric-formula.js';
export * from './placard.js';
export type { Fitment } from './published-rows.js';
export { readTireDesignation } from './read-designation.js';
export { checkRimPressure, checkRimWidth, type RimCheck } from './rim.js';
export { type SpeedInformation, serviceNotes, speedBands, speedInformation } from './service-conventions.js';
export { showDesignation, showSize } from './show-designation.js';
export { type SpeedSymbol, speedSymbol } from './speed-symbol.js';
export {
  type AliasRow,
  aliasTable,
  type DiameterRow,
  diameterTables,
  type FamilyPressureRow,
  familyPressureTable,
  type InflationRow,
  type InflationTable,
  inflationTables,
  type LoadIndexRow,
  type LoadRangeRow,
  loadIndexHighTable,
  loadIndexTable,
  loadRangeTable,
  type SpeedSymbolRow,
  speedSymbolTable,
  tiresTables,
} from './tables.js';
export { type TireLoadAsRun, tireLoadAsRun } from './tire-load-as-run.js';
export { passengerDivisor, type Service, type Tire, type TireRating, tireLoadRating } from './tire-load-rating.js';
export { tirePressureForLoad } from './tire-pressure-for-load.js';
export { wordsForTires } from './words.js';
