/** A row as `assess` gives it: its figures as numbers, and what it lacks. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import { forComparing, fromAssessment, nearest } from '../../../src/study/run/rows-by-assess.js';
import { constant, difference, product, quotient, sum } from '../../../src/trace/index.js';
import { ratio } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const of = (text: string) => constant(ratio(text));

describe('a figure as a number', () => {
  it('is the double nearest to its decimal, however much its steps lost', () => {
    const third = quotient(null, of('1'), of('3'));
    // One is lost beside ten to the twentieth in doubles, and is not in decimals.
    const small = difference(null, sum(null, [of('1e20'), third]), of('1e20'));
    for (const asNumber of [nearest, forComparing]) {
      expect(asNumber(small.value)).toBeCloseTo(1 / 3, 12);
      expect(asNumber(product(null, third, of('3')).value)).toBe(1);
      expect(asNumber(ratio('-0.1'))).toBe(-0.1);
      expect(asNumber(ratio(0))).toBe(0);
    }
  });
});

describe('a row', () => {
  const check = (what: string) => ({ what });
  const assessed = { verdict: 'over', attention: [{ tag: 'b' }, { tag: 'a' }, { tag: 'b' }], tightest: [check('x')] };
  const row = (parts: object, names: readonly string[] = []) =>
    fromAssessment({ ...assessed, ...parts } as unknown as Assessment, names, () => ({ one: of('1'), two: of('2') }));
  it('has the figures that are asked, in that order, each tag once, and what governs', () => {
    expect(rightOf(row({}, ['two', 'one']))).toEqual({
      figures: [2, 1],
      verdict: 'over',
      attention: ['b', 'a'],
      governs: 'x',
    });
    expect(rightOf(row({ tightest: [check('x'), check('y')] })).governs).toBe('x = y');
    expect(rightOf(row({ tightest: [] })).governs).toBe('nothing checked');
  });
  it('is none without a figure that is asked', () => {
    for (const name of ['three', 'constructor'])
      expect(leftOf(row({}, ['one', name])), name).toMatchObject({ tag: 'MissingFact', question: name });
  });
});
