/**
 * Axle systems and axle groups: the weakest part governs, and how axles share a load is said, not assumed.
 *
 * @module axles
 */

export type { AxlePartName, AxleParts, AxleSystem, Set } from './axle-parts.js';
export type { BrakeSizeRow } from './data/brake-sizes.js';
export type { HubRow } from './data/hub-conventions.js';
export * from './errors.js';
export * from './group/group.js';
export { axleLoads, groupCapacity, type SharedAxles, type StandingAxle } from './group/group-loads.js';
export * from './group/load-split.js';
export type { SpringShares } from './group/spring-shares.js';
export type * from './group/suspension.js';
export * from './hardware/hardware.js';
export * from './system.js';
export { wordsForAxles } from './words.js';
