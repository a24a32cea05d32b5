/** Making figures, comparing them, and the wire record: only figures of this library are accepted. */
import { inspect } from 'node:util';
import { Decimal as Foreign } from 'decimal.js';
import fc from 'fast-check';
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it, vi } from 'vitest';
import { isFigure } from '../../src/units/figure.js';
import {
  add,
  allUnits,
  compare,
  dimensionOf,
  foot,
  greatest,
  kg,
  lb,
  least,
  type Quantity,
  quantity,
  sameFigure,
  show,
  subtract,
  type Unit,
  wireQuantity,
} from '../../src/units/index.js';
import { decimals } from '../helpers/arbitraries.js';

describe('figures', () => {
  it('reads a number by its shortest printed decimal, text by its digits', () => {
    expect([lb(0.1), add(lb(0.1), lb(0.2)), lb('7000.50'), lb(1e21)].map(show)).toEqual([
      '0.1 lb',
      '0.3 lb',
      '7,000.5 lb',
      '1,000,000,000,000,000,000,000 lb',
    ]);
  });
  it('reads a Decimal of another copy of the library, whatever its settings', () => {
    const Copy = Foreign.clone({ precision: 5, toExpNeg: -1, toExpPos: 1 });
    expect(show(lb(new Copy('123456.789')))).toBe('123,456.789 lb');
  });
  it('throws a RangeError for what is not a finite number: the slip of a programmer', () => {
    for (const bad of [NaN, Infinity, -Infinity, 'abc', '', '1,000', new Foreign(NaN)])
      expect(() => lb(bad)).toThrow(RangeError);
    expect(() => lb('many')).toThrow(/^not a finite number: many$/);
    expect(() => lb('m'.repeat(99))).toThrow(`not a finite number: ${'m'.repeat(60)}`);
    expect(() => lb('m'.repeat(99))).not.toThrow('m'.repeat(61));
  });
  it('cannot be changed from outside', () => {
    const one = lb('1.5') as unknown as Record<string, unknown>;
    for (const name of ['unit', 'value']) expect(() => Object.assign(one, { [name]: 'kg' })).toThrow(TypeError);
    Object.assign(one, { double: 7, bound: 7 });
    expect([show(lb('1.5')), show(one as never), one['unit']]).toEqual(['1.5 lb', '1.5 lb', 'lb']);
  });
  it('is one decimal, however often it is read', () => {
    const made = add(lb('0.1'), lb('0.2'));
    expect(made.value).toBe(made.value);
  });
  it('compares in tests by unit and digits, with the tester and without it', () => {
    expect(add(lb(3), lb(4))).toEqual(lb(7));
    expect(lb('0.1')).not.toEqual(lb('0.2'));
    expect(lb(7)).not.toEqual(kg(7));
    expect(lb(7)).not.toEqual({ unit: 'lb', value: lb(7).value });
    expect({ deep: [lb('0.3')] }).toEqual({ deep: [add(lb('0.1'), lb('0.2'))] });
    expect([sameFigure(lb(7), lb(7)), sameFigure(lb(7), lb('7.0000000000000000000000000001'))]).toEqual([true, false]);
    expect([sameFigure(lb(7), 7), sameFigure(7, 7)]).toEqual([false, undefined]);
    const iterated = (figure: Quantity<Unit>): unknown => [...(figure as unknown as Iterable<unknown>)];
    expect(iterated(lb('7.5'))).toEqual(['7.5', 'lb']);
  });
  it('goes into JSON as its wire record', () => {
    expect(JSON.stringify({ load: add(lb('7000'), lb('0.5')) })).toBe('{"load":{"value":"7000.5","unit":"lb"}}');
    expect(inspect(lb('7000.5'))).toBe('7000.5 lb');
  });
  it('takes a figure of another copy of the library', async () => {
    vi.resetModules();
    const other = await import('../../src/units/index.js');
    const theirs = other.lb('7000.5') as unknown as Quantity<'lb'>;
    expect(isFigure(theirs)).toBe(false);
    expect(show(add(theirs, lb('0.5')))).toBe('7,001 lb');
    expect([compare(theirs, lb(7000)), compare(lb(7000), theirs)]).toEqual([1, -1]);
    expect(show(theirs)).toBe('7,000.5 lb');
  });
  it('refuses two units at run time as well, where a union slipped past the compiler', () => {
    const feet = foot(1) as Quantity<Unit> as Quantity<'lb'>;
    for (const step of [add, subtract, compare, least, greatest])
      expect(() => step(lb(1), feet)).toThrow('ft is not lb: convert it by name first');
  });
  it('compares after the snap, and subtracts to exactly nothing', () => {
    const third = lb(lb(7000).value.div(3).times(3));
    expect(third.value.eq(7000)).toBe(false);
    expect([compare(third, lb(7000)), compare(lb(7000), third), compare(lb(0), lb(0)), compare(lb(-1), lb(0))]).toEqual(
      [0, 0, 0, -1],
    );
    expect(show(subtract(third, lb(7000)))).toBe('0 lb');
    expect(compare(lb('7000.0000000000000001'), lb(7000))).toBe(1);
  });
  it('finds the least and the greatest', () => {
    expect(show(least(lb(3), lb(-2), lb(9)))).toBe('-2 lb');
    expect(show(greatest(lb(3), lb(-2), lb(9)))).toBe('9 lb');
  });
});

describe('the wire record', () => {
  const mass = wireQuantity('mass');
  it('goes out as text and comes back the same, through JSON', () => {
    expect(mass.encode(lb('7000.5'))).toEqual({ value: '7000.5', unit: 'lb' });
    fc.assert(
      fc.property(decimals, fc.constantFrom(...allUnits), (digits, unit) => {
        const codec = wireQuantity(dimensionOf(unit));
        const q = quantity(digits, unit) as never;
        const read = codec.decode(JSON.parse(JSON.stringify(codec.encode(q))));
        expect(isRight(read) && show(read.right as Quantity<Unit>)).toBe(show(q));
      }),
      { numRuns: 500 },
    );
  });
  it('takes a figure of this library as it stands', () => {
    const read = mass.decode(kg(1150));
    expect(isRight(read) && show(read.right as Quantity<Unit>)).toBe('1,150 kg');
  });
  it.each([
    ['a number', 7000],
    ['nothing', null],
    ['undefined', undefined],
    ['text', '7000 lb'],
    ['a list', ['7000', 'lb']],
    ['an empty record', {}],
    ['digits as a number', { value: 7000, unit: 'lb' }],
    ['no unit', { value: '7000' }],
    ['an unknown unit', { value: '7000', unit: 'stone' }],
    ['a unit of another dimension', { value: '20', unit: 'ft' }],
    ['a unit that every object has', { value: '1', unit: 'constructor' }],
    ['an inherited unit', { value: '1', unit: '__proto__' }],
    ['words for digits', { value: 'many', unit: 'lb' }],
    ['NaN', { value: 'NaN', unit: 'lb' }],
    ['infinity', { value: 'Infinity', unit: 'lb' }],
    ['an exponent', { value: '1e9', unit: 'lb' }],
    ['a unit inside the digits', { value: '5 kg', unit: 'lb' }],
    ['a megabyte of digits', { value: '9'.repeat(1_000_000), unit: 'lb' }],
    [
      'plain data dressed as a decimal',
      JSON.parse('{"value":{"toStringTag":"[object Decimal]","s":1,"e":0,"d":[1]},"unit":"lb"}'),
    ],
    ['a decimal that is not a number', { value: new Foreign(NaN), unit: 'lb' }],
    ['a decimal in no unit', { value: new Foreign(1), unit: 'banana' }],
    ['a record that only inherits', JSON.parse('{"__proto__":{"value":"1","unit":"lb"}}')],
  ])('refuses %s', (_, input) => {
    expect(isLeft(mass.decode(input))).toBe(true);
    expect(mass.is(input)).toBe(false);
  });
});
