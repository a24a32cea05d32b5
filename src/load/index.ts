/**
 * What stands on the trailer and where: curb weight, gross, balance, tongue, payload; placing a machine, ramps, tiedowns.
 *
 * @module load
 */
export * from './balance.js';
export * from './curb.js';
export * from './errors.js';
export * from './guideline.js';
export type { CoupledItem, Item, PlacedItem } from './item.js';
export * from './loading.js';
export * from './payload.js';
export { loadTables } from './tables.js';
export { wordsForLoad } from './words.js';
