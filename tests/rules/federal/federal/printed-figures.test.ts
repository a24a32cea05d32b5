/** The printed figures that functions ask for by rule and place: a slip there is said at once, not answered with another figure. */
import { describe, expect, it } from 'vitest';
import { federalRule, printedLine, printedShare } from '../../../../src/rules/federal/federal.js';
import { sourceOfRule } from '../../../../src/rules/rule.js';
import { show } from '../../../../src/units/index.js';

describe('a printed figure of a rule', () => {
  it('is found by its place, with the operator beside it', () => {
    const { operator, line } = printedLine('surge-1', 0, 'where');
    expect([operator, show(line.value)]).toEqual(['<=', '12,000 lb']);
    expect(show(printedShare('surge-2', 1).share.value)).toBe('1.25');
  });
  it.each([
    ['no such condition', () => printedLine('rig', 5)],
    ['a figure in inches', () => printedLine('width', 0)],
    ['a least of two', () => printedLine('relabel', 0)],
    ['no range', () => printedLine('rig', 0, 'where')],
    ['a figure for a share', () => printedShare('surge-2', 0)],
    ['no such share', () => printedShare('surge-2', 5)],
  ])('is refused: %s', (_, run) => {
    expect(run).toThrow(RangeError);
  });
});

it('a rule as a source says when it was read, and the date of the copy where it carries one', () => {
  expect(sourceOfRule(federalRule('surge-1')).edition).toBe('dated 2007-03-06, read 2026-11');
  expect(sourceOfRule(federalRule('breakaway')).edition).toBe('read 2026-11');
});
