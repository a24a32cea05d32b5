/**
 * Ratings and the weights they limit: which may meet, and what comes of it.
 *
 * @module ratings
 */

export * from './bounds.js';
export * from './check.js';
export { checkId, isRatingKind } from './check-id.js';
export type { ComponentKind, Limits, RatingKind, Supports, WeightKind } from './kinds.js';
export * from './note.js';
