/**
 * Questions over whole assessments: builds side by side, one class up, the smallest that carries.
 *
 * @module choose
 */
export { type ClassUp, classUpText, type LineCrossed, oneClassUp } from './class-up.js';
export { type ComparedFigure, type Comparison, changeOf, compare, comparisonText, type Print } from './compare.js';
export { type Candidate, type Need, type Smallest, smallestThatCarries } from './smallest.js';
