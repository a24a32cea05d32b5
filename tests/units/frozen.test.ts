/** What is shared by all answers is frozen through and through, its decimals too. */
import { expect, it } from 'vitest';
import { frozen } from '../../src/units/frozen.js';
import { lb } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';

it('freezes records, lists and decimals inside one another, and gives the value back', () => {
  const digits = new Decimal('7000.5');
  const value = { list: [1, { nothing: null, none: undefined, digits }], text: 'a', figure: lb(7) };
  expect(frozen(value)).toBe(value);
  for (const part of [value, value.list, value.list[1], digits, digits.d]) expect(Object.isFrozen(part)).toBe(true);
  expect(() => {
    digits.d[0] = 1;
  }).toThrow(TypeError);
  expect(digits.toFixed()).toBe('7000.5');
});

it('gives back what cannot be changed as it is', () => {
  expect([frozen(null), frozen(undefined), frozen(7), frozen('a')]).toEqual([null, undefined, 7, 'a']);
  const already = Object.freeze({ inside: { open: true } });
  expect(Object.isFrozen(frozen(already).inside)).toBe(false);
});
