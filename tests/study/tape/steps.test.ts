/** Each operation of the tape against the decimal reading of the same working, in every form. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyRounding } from '../../../src/study/tape/float-rounding.js';
import { tapeOf } from '../../../src/study/tape/tape.js';
import {
  arcSine,
  arcTangent,
  converted,
  decimalReading,
  difference,
  given,
  greatestOf,
  leastOf,
  power,
  product,
  quotient,
  rounded,
  sine,
  squareRoot,
  sum,
  tangent,
  weightAsForce,
} from '../../../src/trace/index.js';
import { degree, lb, quantity, type RoundingMode, ratio } from '../../../src/units/index.js';
import { expectSame, fixed, input, type R, rows, x, y } from './on-tape.js';

const binary: Readonly<Record<string, (a: R, b: R) => R>> = {
  sum: (a, b) => sum('s', [a, b]),
  difference: (a, b) => difference('d', a, b),
  product: (a, b) => product('p', a, b),
  quotient: (a, b) => quotient('q', a, b),
  least: (a, b) => leastOf('l', [a, b]),
  greatest: (a, b) => greatestOf('g', [a, b]),
  power: (a, b) => power('w', a, b),
};

describe.each(Object.entries(binary))('%s', (name, step) => {
  const small = name === 'power' ? { x: [1, 0.25, 7.125, 3, 0.001], y: [2, 1.5, 0.5, 2.25, 3] } : rows;
  it('of a column and a column', () => expectSame([step(x, y), step(y, x)], small));
  it('of a column and a number', () => expectSame([step(x, fixed)], small));
  it('of a number and a column', () => expectSame([step(fixed, y)], small));
  it('of a column and itself', () => expectSame([step(x, x)], small));
  it('of two numbers, folded', () => {
    expect(tapeOf([step(fixed, fixed).why], ['x']).steps).toEqual([]);
    expectSame([step(fixed, fixed)], small);
  });
});

describe('operations of one figure', () => {
  it('convert', () =>
    expectSame(
      [
        converted('k', given('x', lb(1), 'stated', 'x'), 'kg'),
        converted('t', given('y', quantity(1, 'ft'), 'stated', 'y'), 'mm'),
      ],
      rows,
    ));
  it('relabel', () => expectSame([weightAsForce('f', given('x', lb(1), 'stated', 'x'))], rows));
  it('square root', () => expectSame([squareRoot('r', x)], rows));
  it('sine, tangent', () =>
    expectSame([sine('s', given('x', degree(1), 'stated', 'x')), tangent('t', given('x', degree(1), 'stated', 'x'))], {
      x: [0, 0.5, 12, 45, 89, -30],
    }));
  it('arc sine, arc tangent', () =>
    expectSame([arcSine('s', input('x', 0.5)), arcTangent('t', input('x', 0.5))], { x: [0, 0.5, -0.75, 1, -1] }));
  it.each(['down', 'up', 'nearest', 'nearest-down'] as const)(
    'round %s, on the step, between steps, on the half',
    (mode) => {
      for (const step of ['1', '5', '0.1', '0.25'])
        expectSame([rounded('r', x, ratio(step), mode)], {
          x: [0, 0.1, 0.2, 0.3, 0.5, 1.5, 2.5, 2.4999, 7, 12.5, 17.5, 299.99, -0.5, -2.5, -1.2, -7],
        });
    },
  );
  it('round as decimals do, for any figure of few digits', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e6, max: 1e6 }),
        fc.constantFrom(0.01, 0.1, 0.5, 1, 5, 25),
        fc.constantFrom<RoundingMode>('down', 'up', 'nearest', 'nearest-down'),
        (n, step, mode) => {
          const figure = n / 1000;
          expect(applyRounding(figure, step, mode)).toBeCloseTo(
            decimalReading.round(ratio(figure).value, ratio(step).value, mode).toNumber(),
            8,
          );
        },
      ),
      {
        examples: [
          [-129445, 0.01, 'nearest'],
          [129445, 0.01, 'nearest-down'],
        ],
        numRuns: 2000,
      },
    );
  });
});

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
