/**
 * Weights that are known in part. All weights are greater than zero, so the greatest and the sum of the known parts are
 * lower bounds of the whole: enough to say that a line is crossed, never enough to say that it is not.
 */
import { type Derived, greatestOf, sum, type Terms } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';

/** A figure, and the facts it still lacks. With facts missing it is a lower bound; without a figure it is unknown. */
export interface Partly<U extends Unit> {
  readonly figure: Derived<U> | undefined;
  readonly missing: readonly string[];
  /** The thing does not exist: no fact is missing, and there is no figure. */
  readonly absent?: true;
}

export const wholly = <U extends Unit>(figure: Derived<U>): Partly<U> => ({ figure, missing: [] });
export const notThere: Partly<never> = Object.freeze({ figure: undefined, missing: [], absent: true });
export const lacking = (fact: string): Partly<never> => ({ figure: undefined, missing: [fact] });

const missingOf = (parts: readonly Partly<Unit>[]): readonly string[] => [
  ...new Set(collected(parts, ({ missing }) => missing)),
];
const figuresOf = <U extends Unit>(parts: readonly Partly<U>[]): readonly Derived<U>[] =>
  collected(parts, ({ figure }) => (figure === undefined ? [] : [figure]));

/** The greatest of what is known. */
export function greatestKnown<U extends Unit>(symbol: string, parts: readonly Partly<U>[]): Partly<U> {
  const figures = figuresOf(parts);
  return {
    figure: figures.length === 0 ? undefined : greatestOf(symbol, figures as Terms<U>),
    missing: missingOf(parts),
  };
}

/** The sum of what is known. */
export function sumKnown<U extends Unit>(symbol: string, parts: readonly Partly<U>[]): Partly<U> {
  const figures = figuresOf(parts);
  return { figure: figures.length === 0 ? undefined : sum(symbol, figures as Terms<U>), missing: missingOf(parts) };
}
