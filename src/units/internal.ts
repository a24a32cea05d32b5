/** What the chapters above need of the decimals and users do not: kept out of the public index. */
export { compareDecimals, Decimal, one, signOf, snappedDifference, zero } from './decimal.js';
export { ofDecimal } from './quantity.js';
export { inShort } from './words.js';
