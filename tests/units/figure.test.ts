/** A figure is a double with a bound, and a decimal that is worked out when it is read, from the step it was told. */
import { Decimal as Foreign } from 'decimal.js';
import { expect, it } from 'vitest';
import { begin, boundOf, doubleOf, isFigure, keep, laterFrom, ofNumber, openStep } from '../../src/units/figure.js';
import { lb } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';

const step = { digits: '7000.5' };
let made = 0;
const make = (of: object): Decimal => {
  made += 1;
  return new Decimal((of as typeof step).digits);
};
const other = (): Decimal => new Decimal(1);

it('is made once, when it is read, and then rests on no step any more', () => {
  const later = laterFrom('lb', 7000.4, 0.2, make);
  begin(later, step);
  expect([openStep(later, make), openStep(later, other)]).toEqual([step, undefined]);
  expect([doubleOf(later), boundOf(later), made]).toEqual([7000.4, 0.2, 0]);
  expect([later.value.toFixed(), later.value.toFixed(), made]).toEqual(['7000.5', '7000.5', 1]);
  expect(openStep(later, make)).toBeUndefined();
});

it('keeps a decimal that was made for it elsewhere', () => {
  const later = laterFrom('lb', 7000.4, 0.2, make);
  begin(later, step);
  keep(later, new Decimal('7000.5'));
  expect(openStep(later, make)).toBeUndefined();
  expect(later.value.toFixed()).toBe('7000.5');
});

it('of digits or of another copy of the library rests on no step, and counts by its digits', () => {
  const theirs = { unit: 'lb', value: new Foreign('7000.1') } as never;
  expect([lb('7000.1'), ofNumber(7000, 'lb'), theirs].map((figure) => openStep(figure, make))).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect([isFigure(theirs), isFigure(lb(7)), isFigure(null), isFigure(7)]).toEqual([false, true, false, false]);
  expect([doubleOf(theirs), boundOf(theirs)]).toEqual([7000.1, boundOf(lb('7000.1'))]);
});
