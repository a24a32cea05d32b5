/** Which figures of an assessment a study prints. */
import type { Assessment } from '../../assessment/index.js';
import { type Derived, leastOf } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import type { UnusableVariation } from '../errors.js';
import { unusable } from '../plan/plan-refusal.js';

/**
 * The figures a study prints, taken from an assessment; absent ones make a row unanswered. It picks the same figures whatever their
 * values: one that chooses by a figure or a verdict is found out by the sample, as a mismatch.
 */
export type Measure = (assessment: Assessment) => Readonly<Record<string, Derived<Unit>>>;

const isFigure = (made: unknown): made is Derived<Unit> => {
  const why: unknown =
    typeof made === 'object' && made !== null && Object.hasOwn(made, 'why') && (made as Derived<Unit>).why;
  return typeof why === 'object' && why !== null && Object.hasOwn(why, 'kind');
};

/** A measure of which only figures are taken; what else it made, where types did not check it, refuses the study. */
export function onlyFigures(measure: Measure): {
  readonly measure: Measure;
  readonly refusal: () => UnusableVariation | undefined;
} {
  let wrong: UnusableVariation | undefined;
  const take = (assessment: Assessment): ReturnType<Measure> => {
    const made: unknown = measure(assessment);
    const parts = typeof made === 'object' && made !== null ? Object.entries(made) : [];
    if (typeof made !== 'object' || made === null)
      wrong ??= unusable('measure', made, 'a function that gives a record of figures');
    const [stray] = parts.filter(([, part]) => part !== undefined && !isFigure(part));
    if (stray !== undefined) wrong ??= unusable(`measure.${stray[0]}`, stray[1], 'a figure with its working');
    return Object.fromEntries(parts.filter((part): part is [string, Derived<Unit>] => isFigure(part[1])));
  };
  return { measure: take, refusal: () => wrong };
}

/**
 * Empty and gross weight, tongue load and share, payload, the least of what is left of any rating, and what is left of each.
 *
 * @example Object.keys(standardMeasure(orThrow(assess(spec))))[0] // empty weight
 */
export const standardMeasure: Measure = ({ weights: weighed, payload: carry, checks }) => ({
  ...(weighed.curb && { 'empty weight': weighed.curb }),
  ...(weighed.gross && { 'gross weight': weighed.gross }),
  ...(weighed.balance && { 'tongue load': weighed.balance.tongue, 'tongue share': weighed.balance.tongueShare }),
  ...(carry?.best && { payload: carry.best.weight }),
  ...(checks.length > 0 && {
    'tightest reserve': leastOf(
      'tightest reserve',
      checks.map(({ reserve }) => reserve),
    ),
  }),
  ...Object.fromEntries(checks.map(({ what, reserve }) => [`left: ${what}`, reserve])),
});

/**
 * What each limit lets the trailer carry at the best tongue share: the least of them is the payload, and sets it.
 *
 * @example Object.keys(payloadByLimit(orThrow(assess(spec))))[0] // payload by GVWR
 */
export const payloadByLimit: Measure = ({ payload }) =>
  Object.fromEntries((payload?.best?.limits ?? []).map(({ name, limit }) => [`payload by ${name}`, limit]));
