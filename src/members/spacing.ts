/** Spacing rules: from a spacing and a length to a number of pieces and the place of their common centre of gravity. */
import { constant, type Derived, difference, product, quotient, rounded, sum } from '../trace/index.js';
import { ratio } from '../units/index.js';
import { number } from './constants.js';
import type { CountRule } from './cut-list.js';

const one = ratio(1);
const single = constant(one);

/** The caller has ruled out a spacing or a length of zero, and rules out a count of zero before the place is asked for. */
export function countOf(name: string, spacing: Derived<'in'>, over: Derived<'in'>, rule: CountRule): Derived<'ratio'> {
  const spaces = quotient(null, over, spacing);
  switch (rule) {
    case 'first at the start':
      return sum(`number of ${name}`, [rounded(null, spaces, one, 'down'), single]);
    case 'first at the start, last at the end':
      return sum(`number of ${name}`, [rounded(null, spaces, one, 'up'), single]);
    case 'none at either end':
      return difference(`number of ${name}`, rounded(null, spaces, one, 'up'), single);
  }
}

/** Where they balance: the mean of their places. */
export function placeOf(
  name: string,
  from: Derived<'in'>,
  spacing: Derived<'in'>,
  over: Derived<'in'>,
  count: Derived<'ratio'>,
  rule: CountRule,
): Derived<'in'> {
  const symbol = `${name} position`;
  switch (rule) {
    case 'first at the start': {
      return sum(symbol, [from, quotient(null, product(null, difference(null, count, single), spacing), number(2))]);
    }
    case 'none at either end': {
      return sum(symbol, [from, quotient(null, product(null, sum(null, [count, single]), spacing), number(2))]);
    }
    case 'first at the start, last at the end': {
      const gaps = product(null, difference(null, count, single), difference(null, count, number(2)));
      const evenly = quotient(null, product(null, gaps, spacing), number(2));
      return sum(symbol, [from, quotient(null, sum(null, [evenly, over]), count)]);
    }
  }
}
