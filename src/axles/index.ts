/**
 * Axle systems and axle groups: the weakest part governs, and how axles share a load is said, not assumed.
 *
 * @module axles
 */
export * from './errors.js';
export * from './group.js';
export * from './hardware.js';
export * from './system.js';
export { wordsForAxles } from './words.js';
