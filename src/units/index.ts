/**
 * Quantities: a figure and its unit in one type. Reading, printing, exact conversion, arithmetic, rounding by name.
 *
 * @module units
 */
export * from './arithmetic.js';
export * from './codec.js';
export { convert, type Factor } from './convert.js';
export type { Decimal } from './decimal.js';
export * from './errors.js';
export * from './force.js';
export type { Divisor, Multiplier, Product, Quotient } from './products.js';
export * from './quantity.js';
export * from './read.js';
export { inReaderUnits, type ReaderUnits } from './reader-units.js';
export { type RoundingMode, roundCapacityDown, roundLoadUp, roundNearest } from './rounding.js';
export { show, showBrief, showFeetInches, showNumber, showUnit } from './show.js';
export { wrapText } from './text.js';
export {
  allUnits,
  type Dimension,
  dimensionOf,
  isUnit,
  type SameDimension,
  type Unit,
  type UnitOf,
} from './unit-list.js';
export { mustBe, wordsForUnits } from './words.js';
