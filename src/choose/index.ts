/**
 * Questions over whole assessments: how do builds compare, what changes one class up, which of ours carries it?
 *
 * @module choose
 */
export { type ClassUp, type LineCrossed, oneClassUp } from './class-up.js';
export { type ComparedFigure, type Comparison, changeOf, compare, type Print } from './compare.js';
export { type Candidate, type Need, type Smallest, smallestThatCarries } from './smallest.js';
