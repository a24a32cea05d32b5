/**
 * Ratings and the weights they limit: which may meet, and what comes of it.
 *
 * @module ratings
 */

export * from './bounds.js';
export { type Check, checkLoad, checkPart, type Verdict } from './check.js';
export { checkId } from './check-id.js';
export type { ComponentKind, Limits, RatingKind, Supports, WeightKind } from './kinds.js';
export * from './note.js';
export { type Capacity, capacity, type Rating, rating, type Weight, weight } from './rating.js';
export { tightest } from './tightest.js';
