/**
 * Trailer engineering arithmetic that shows its working: every chapter as a namespace. Each is a subpath of its own too.
 *
 * @module trailer-ratings
 */

export * as assessment from './assessment/index.js';
export * as axles from './axles/index.js';
export * as choose from './choose/index.js';
export { describeError, orThrow, type TrailerError, wordsFor } from './errors.js';
export * as figures from './figures/index.js';
export * as load from './load/index.js';
export * as members from './members/index.js';
export * as print from './print/index.js';
export * as ratings from './ratings/index.js';
export * as rules from './rules/index.js';
export * as spec from './spec/index.js';
export * as study from './study/index.js';
export * as tires from './tires/index.js';
export * as towing from './towing/index.js';
export * as trace from './trace/index.js';
export * as units from './units/index.js';
