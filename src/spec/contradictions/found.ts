/** The result of a search for contradictions: problems at their keys, and the comparisons behind them. */
import { type Comparison, type Decision, type Derived, decide } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { collected, showCrossed } from '../../units/internal.js';
import type { Problem } from '../errors.js';

/** A spec of which some parts may not be there, because they could not be read. */
export type Partly<T> = T extends { readonly why: unknown }
  ? T
  : T extends readonly (infer E)[]
    ? readonly (Partly<E> | undefined)[]
    : T extends object
      ? { readonly [K in keyof T]?: Partly<T[K]> | undefined }
      : T;

/** Contradictions, and the comparisons behind them. */
export interface Found {
  /** One for each key that may have to change. */
  readonly problems: readonly Problem[];
  /** For studies: where a figure decided it. */
  readonly decisions: readonly Decision[];
}

export const nothingFound: Found = { problems: [], decisions: [] };

/** What several searches found, as one. */
export const gathered = (found: readonly Found[]): Found => ({
  problems: collected(found, ({ problems }) => problems),
  decisions: collected(found, ({ decisions }) => decisions),
});

/** A contradiction at one key. */
export const contradiction = (path: string, got: string, needed: string): Problem => ({
  path,
  fault: 'contradiction',
  got,
  needed,
});

/** Two figures that must be in order: when they are not, the error is given at both of their keys. */
export function inOrder<U extends Unit>(
  first: readonly [path: string, what: string, figure: Derived<U> | undefined],
  comparison: Comparison & ('<' | '<='),
  second: readonly [path: string, what: string, figure: Derived<NoInfer<U>> | undefined],
): Found {
  const [[path, what, low], [other, name, high]] = [first, second];
  if (low === undefined || high === undefined) return nothingFound;
  const decision = decide(low, comparison, high);
  if (decision.holds) return { problems: [], decisions: [decision] };
  const [least, most] = comparison === '<' ? ['more than', 'less than'] : ['at least', 'at most'];
  const [large, small] = showCrossed(low.value, high.value);
  const problems = [
    contradiction(path, large, `${most} ${small}, ${name}`),
    contradiction(other, small, `${least} ${large}, ${what}`),
  ];
  return { problems, decisions: [decision] };
}
