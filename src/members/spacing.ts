/** Spacing rules: from a spacing and a length to a number of pieces and the place of their common centre of gravity. */
import { constant, type Derived, difference, minus, over, plus, result, roundTo, sum, times } from '../trace/index.js';
import { ratio } from '../units/index.js';
import type { CountRule } from './cut-list.js';

const one = ratio(1);
const single = constant(one);

/** The caller has ruled out a spacing or a length of zero, and rules out a count of zero before the place is asked for. */
export function countOf(
  name: string,
  spacing: Derived<'in'>,
  length: Derived<'in'>,
  rule: CountRule,
): Derived<'ratio'> {
  const spaces = over(length, spacing);
  switch (rule) {
    case 'first at the start':
      return sum(`number of ${name}`, [roundTo(spaces, one, 'down'), single]);
    case 'first at the start, last at the end':
      return sum(`number of ${name}`, [roundTo(spaces, one, 'up'), single]);
    case 'none at either end':
      return difference(`number of ${name}`, roundTo(spaces, one, 'up'), single);
  }
}

/** Where they balance: the mean of their places. */
export function placeOf(
  name: string,
  from: Derived<'in'>,
  spacing: Derived<'in'>,
  length: Derived<'in'>,
  count: Derived<'ratio'>,
  rule: CountRule,
): Derived<'in'> {
  const symbol = `${name} position`;
  switch (rule) {
    case 'first at the start': {
      return result(symbol, plus(from, over(times(minus(count, single), spacing), 2)));
    }
    case 'none at either end': {
      return result(symbol, plus(from, over(times(plus(count, single), spacing), 2)));
    }
    case 'first at the start, last at the end': {
      const gaps = times(minus(count, single), minus(count, 2));
      const evenly = over(times(gaps, spacing), 2);
      return result(symbol, plus(from, over(plus(evenly, length), count)));
    }
  }
}
