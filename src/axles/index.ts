/**
 * Axle systems and axle groups: the weakest part governs, and how axles share a load is said, not assumed.
 *
 * @module axles
 */

export type { BrakeSizeRow } from './data/brake-sizes.js';
export type { HubRow } from './data/hub-conventions.js';
export * from './errors.js';
export * from './group.js';
export { axleLoads, groupCapacity, type SharedAxles, type StandingAxle } from './group-loads.js';
export * from './hardware.js';
export * from './load-split.js';
export type { SpringShares } from './spring-shares.js';
export type * from './suspension.js';
export * from './system.js';
export { wordsForAxles } from './words.js';
