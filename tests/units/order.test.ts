/** Which of two figures is the greater, with the snap that lets a tie of thirds be a tie, and without it. */
import { describe, expect, it } from 'vitest';
import { lb, type Quantity, subtract } from '../../src/units/index.js';
import { isBetween } from '../../src/units/internal.js';
import { compareFigures, exactOrder, signOfFigure } from '../../src/units/order.js';

const tenth = lb('0.1');
/** A tenth and a unit in the thirtieth place. */
const hairMore = lb(`0.1${'0'.repeat(28)}1`);

describe('a figure between two others', () => {
  it('stands on either end, and on neither side of them', () => {
    const between = (figure: Quantity<'lb'>): boolean => isBetween(figure, lb('0.1'), lb('0.3'));
    expect([lb('0.1'), lb('0.2'), lb('0.3')].map(between)).toEqual([true, true, true]);
    expect([lb('0.0999999'), lb('0.3000001'), lb(0), lb(1)].map(between)).toEqual([false, false, false, false]);
    expect(isBetween(lb(5), lb(5), lb(5))).toBe(true);
  });
  it('is told from the end by a digit that no double holds', () => {
    expect(isBetween(hairMore, tenth, tenth)).toBe(false);
    expect(isBetween(tenth, hairMore, lb(1))).toBe(false);
    expect(isBetween(hairMore, tenth, lb(1))).toBe(true);
  });
});

describe('the order', () => {
  it('counts figures as one that agree to 24 digits, but not digit for digit', () => {
    expect([compareFigures(hairMore, tenth), compareFigures(tenth, hairMore)]).toEqual([0, 0]);
    expect([exactOrder(hairMore, tenth), exactOrder(tenth, hairMore)]).toEqual([1, -1]);
    expect([compareFigures(lb('0.2'), tenth), compareFigures(tenth, lb('0.2'))]).toEqual([1, -1]);
  });
  it('against zero is the sign', () => {
    const nothing = subtract(lb('0.3'), lb('0.3'));
    expect([lb('0.001'), lb('-0.001'), lb(0), nothing].map(signOfFigure)).toEqual([1, -1, 0, 0]);
  });
});
