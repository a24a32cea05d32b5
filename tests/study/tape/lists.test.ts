import { describe, it } from 'vitest';
import { greatestOf, leastOf, sum } from '../../../src/trace/index.js';
import { expectSame, fixed, input } from './on-tape.js';

describe('lists', () => {
  it.each([1, 2, 3, 4, 5, 9])('of %i terms, some of them numbers', (count) => {
    const terms = Array.from({ length: count }, (_, i) => input(`v${i}`, i + 1));
    const figures = Object.fromEntries(terms.map(({ why }, i) => [why.symbol as string, [i + 0.5, 10 - i, i * i]]));
    expectSame(
      [
        sum('a', terms),
        leastOf('b', terms),
        greatestOf('c', terms),
        sum('d', [...terms, fixed, fixed]),
        leastOf('e', [fixed, ...terms]),
        greatestOf('f', [fixed, ...terms]),
      ],
      figures,
    );
  });
});
