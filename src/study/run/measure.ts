/** Which figures of an assessment a study prints. */
import type { Assessment } from '../../assessment/index.js';
import type { Derived } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';

/**
 * The figures a study prints, taken from an assessment; absent ones make a row unanswered. It picks the same figures whatever their
 * values: one that chooses by a figure or a verdict is found out by the sample, as a mismatch.
 */
export type Measure = (assessment: Assessment) => Readonly<Record<string, Derived<Unit>>>;

/** Gross, tongue load and share, payload, reserve of every check. @example Object.keys(standardMeasure(orThrow(assess(spec))))[0] // gross weight */
export const standardMeasure: Measure = ({ weights: weighed, payload: carry, checks }) => ({
  ...(weighed.gross && { 'gross weight': weighed.gross }),
  ...(weighed.balance && { 'tongue load': weighed.balance.tongue, 'tongue share': weighed.balance.tongueShare }),
  ...(carry?.best && { payload: carry.best.weight }),
  ...Object.fromEntries(checks.map(({ what, reserve }) => [`left: ${what}`, reserve])),
});
