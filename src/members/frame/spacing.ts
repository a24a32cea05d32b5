/** Spacing rules: from a spacing and a length to a number of pieces and the place of their common centre of gravity. */
import { type Derived, minus, over, plus, result, roundTo, times } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import type { CountRule } from './cut-list.js';

const one = ratio(1);

/**
 * `floor(run / spacing) + 1`, `ceil(run / spacing) + 1` or `ceil(run / spacing) - 1`.
 *
 * The caller has ruled out a spacing or a run of zero, and rules out a count of zero before the place is asked for.
 */
export function countOf(name: string, spacing: Derived<'in'>, run: Derived<'in'>, rule: CountRule): Derived<'ratio'> {
  const spaces = roundTo(over(run, spacing), one, rule === 'first at the start' ? 'down' : 'up');
  const count = rule === 'none at either end' ? minus(spaces, 1) : plus(spaces, 1);
  return result(`number of ${name}`, count);
}

/**
 * Where the pieces balance: the mean of their places, `start + (n - 1) s / 2`, or `start + (n + 1) s / 2` with none at either end.
 *
 * With the last at the end: `start + ((n - 1) (n - 2) s / 2 + run) / n`.
 */
export function placeOf(
  name: string,
  start: Derived<'in'>,
  spacing: Derived<'in'>,
  run: Derived<'in'>,
  n: Derived<'ratio'>,
  rule: CountRule,
): Derived<'in'> {
  const place = (fromStart: Derived<'in'>): Derived<'in'> => result(`${name} position`, plus(start, fromStart));
  switch (rule) {
    case 'first at the start':
      return place(over(times(minus(n, 1), spacing), 2));
    case 'none at either end':
      return place(over(times(plus(n, 1), spacing), 2));
    case 'first at the start, last at the end': {
      const evenly = over(times(minus(n, 1), minus(n, 2), spacing), 2);
      return place(over(plus(evenly, run), n));
    }
  }
}
