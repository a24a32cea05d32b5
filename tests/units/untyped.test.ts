/** Forms of what types did not check: the first misfit, with its place; only keys of the record itself count. */
import { describe, expect, it } from 'vitest';
import { given } from '../../src/trace/index.js';
import { inch, kg, lb } from '../../src/units/index.js';
import {
  aFigure,
  aFunction,
  aNumber,
  anything,
  aRecord,
  aText,
  aWholeNumber,
  byKind,
  exactly,
  type Form,
  here,
  listOf,
  oneOf,
  recordOf,
} from '../../src/units/internal.js';

const told = (form: Form, value: unknown): string => {
  const misfit = form(value, '');
  return misfit === undefined ? 'fits' : `${misfit.path}: ${misfit.found}, not ${misfit.needed}`;
};

describe('a form', () => {
  it('tells the first misfit and where it is', () => {
    expect(told(listOf(aText), ['a', 1, 2])).toBe('1: 1, not a text');
    expect(told(listOf(aText), 'a')).toBe(': "a", not a list');
    expect(told(listOf(aText, 2), ['a'])).toBe(': a list of 1, not a list of 2');
    expect(told(recordOf(listOf(aNumber)), { a: [1], b: [2, 'x'] })).toBe('b.1: "x", not a number');
    expect(told(oneOf(['up', 'down']), 'left')).toBe(': "left", not one of up, down');
    expect(told(aWholeNumber, -1)).toBe(': -1, not a whole number from 0');
  });
  it('of a record passes over keys that nobody asks, or refuses them', () => {
    const forms = [{ name: aText }, { count: aNumber }] as const;
    expect(told(aRecord(...forms), { name: 'a', other: 1 })).toBe('fits');
    expect(told(exactly(...forms), { name: 'a', other: 1 })).toBe('other: 1, not no such key');
    expect(told(exactly(...forms), { count: 1 })).toBe('name: nothing, not a value');
    for (const form of [aRecord(...forms), exactly(...forms)]) {
      expect(told(form, { name: 'a', count: 'x' })).toBe('count: "x", not a number');
      expect(told(form, { name: 'a' })).toBe('fits');
    }
  });
  it('of a record reads its own keys alone', () => {
    const inherits = Object.create({ name: 'a' }) as unknown;
    expect(told(aRecord({ name: aText }), inherits)).toBe('name: nothing, not a text');
    expect(told(exactly({ name: aText }), inherits)).toBe('name: nothing, not a value');
    expect(told(byKind('name', { a: aNumber }, aText), inherits)).toBe(': a record, not a text');
  });
  it('is chosen by a word, and may tell its faults at the record', () => {
    const form = recordOf(byKind('kind', { size: here({ size: aNumber }) }, here({ kind: oneOf(['size']) })));
    expect(told(form, { a: { kind: 'size', size: 1 } })).toBe('fits');
    expect(told(form, { a: { kind: 'size' } })).toBe('a: nothing, not a number');
    expect(told(form, { a: { kind: 'toString' } })).toBe('a: "toString", not one of size');
  });
});

const fits = (form: Form, value: unknown): boolean => form(value, 'question') === undefined;

it('tells texts, numbers, functions and anything apart', () => {
  const values = ['a text', 7, () => 7, undefined];
  expect([aText, aNumber, aFunction, anything].map((form) => values.map((value) => fits(form, value)))).toEqual([
    [true, false, false, false],
    [false, true, false, false],
    [false, false, true, false],
    [true, true, true, true],
  ]);
});

describe('a figure', () => {
  const weight = aFigure('mass');
  it('is one of the library, or one with its working', () => {
    expect(fits(weight, lb(9000))).toBe(true);
    expect(fits(weight, kg(4000))).toBe(true);
    expect(fits(weight, given('weight', lb(9000)))).toBe(true);
    expect(fits(aFigure('mass', 'length'), inch(7))).toBe(true);
  });
  it('is of the right dimension, and no record that only poses as one', () => {
    for (const wrong of [inch(7), given('place', inch(7)), 7, '7 lb', null, { value: lb(9000) }, { why: {} }])
      expect(fits(weight, wrong)).toBe(false);
    expect(weight(7, 'cargo')).toEqual({
      path: 'cargo',
      found: '7',
      needed: 'a figure of mass as the library makes them',
    });
  });
});
