/**
 * The working behind every figure: sources, what inputs rest on, recorded steps, explanation, replay.
 *
 * @module trace
 */
export { type Basis, bases, isBasis, weaker } from './basis.js';
export * from './decide.js';
export { type Derivatives, derivatives, type PieceTaken, type Slope, slopesText } from './derivatives.js';
export * from './errors.js';
export { type ExplainOptions, explain, type WorkingLine, workingLines } from './explain.js';
export * from './formula-words.js';
export * from './functions.js';
export * from './guards.js';
export * from './guards-of-counts.js';
export { asDerived, constant, fromTable, given, renamed } from './leaves.js';
export * from './measures.js';
export type { Computed, Constant, Derived, Given, Known, LookedUp, Node, Operation } from './node.js';
export { decimalReading, type Reading, readNode, readOperation } from './reading.js';
export * from './record.js';
export { figureWith, nodesOf, replay } from './replay.js';
export { pathsBehind, type WeakestInputs, weakestInputs } from './rests-on.js';
export { citation, commonPractice, fromMemory, type Grade, needsVerification, type Source, statics } from './source.js';
export type { Name } from './step.js';
export { findRow, notTabulated, type Table } from './table.js';
export { greatestOf, leastOf, sum, type Terms } from './terms.js';
export { wordsForTrace } from './words.js';
