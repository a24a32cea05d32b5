/** What the chapters above need of the decimals and users do not: kept out of the public index. */
export { compareDecimals, snappedDifference } from './closeness.js';
export { Decimal, one, powerOf, signOf, workedOut, zero } from './decimal.js';
export { boundOf, doubleOf, ofDecimal } from './figure.js';
export { frozen } from './frozen.js';
export { showApart, showCrossed, showInWords } from './in-words.js';
export { collected, pushAll } from './lists.js';
export { compareFigures, compareProducts, isBetween, signOfFigure } from './order.js';
export { has, isRecord, orNone, own } from './own.js';
export { remembered } from './remembered.js';
export { roundLoadAway } from './rounding.js';
export { editDistance, harmless, nearestKeys, wrapText } from './text.js';
export {
  aFigure,
  aFunction,
  aNumber,
  anything,
  aRecord,
  aText,
  aWholeNumber,
  byKind,
  exactly,
  type Form,
  here,
  is,
  listOf,
  type Misfit,
  oneOf,
  recordOf,
} from './untyped.js';
export { inShort, neededToRead } from './words.js';
