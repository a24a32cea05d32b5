/**
 * The working behind every figure: sources, what inputs rest on, recorded steps, explanation, replay.
 *
 * @module trace
 */
export { bases, isBasis, type Basis, weaker } from './basis.js';
export * from './decide.js';
export * from './errors.js';
export * from './formula-words.js';
export * from './guards.js';
export { explain, type WorkingLine, workingLines } from './explain.js';
export { constant, given, known, lookedUp, named } from './leaves.js';
export type { Computed, Constant, Derived, Given, Known, LookedUp, Node, Operation } from './node.js';
export { decimalReading, type Reading, readNode, readOperation } from './reading.js';
export * from './measures.js';
export * from './record.js';
export { figureWith, nodesOf, replay } from './replay.js';
export { type Footing, restsOn } from './rests-on.js';
export { citation, commonPractice, fromMemory, type Grade, type Source, statics, wantsVerifying } from './source.js';
export { findRow, notTabulated, type Table } from './table.js';
export { wordsForTrace } from './words.js';
