/** Figures in sentences: few digits as they are, others rounded by name, and two that differ never alike. */
import { describe, expect, it } from 'vitest';
import { inch, lb, type Quantity, quantity, ratio, type Unit } from '../../src/units/index.js';
import { showApart, showCrossed, showInWords } from '../../src/units/internal.js';

const third = (n: number): Quantity<'lb'> => lb(`${n}.3333333333333333333333333333333333`);

describe('a figure in a sentence', () => {
  it('of at most seven digits is told whole', () => {
    for (const [figure, text] of [
      [lb(0), '0 lb'],
      [lb('0.0000001'), '0.0000001 lb'],
      [inch('96.125'), '96.125 in'],
      [lb('12345.67'), '12,345.67 lb'],
      [lb(1234567000), '1,234,567,000 lb'],
    ] as const)
      expect(showInWords(figure)).toBe(text);
  });
  it('of more is rounded by name, to two decimals, or four below one', () => {
    expect(['down', 'up', 'nearest'].map((mode) => showInWords(third(10), mode as 'up'))).toEqual([
      '10.33 lb',
      '10.34 lb',
      '10.33 lb',
    ]);
    expect(showInWords(ratio('0.123456789'), 'up')).toBe('0.1235');
    expect(showInWords(inch('-0.123456789'), 'down')).toBe('-0.1235 in');
    expect(showInWords(lb('123456.789'))).toBe('123,456.8 lb');
    expect(showInWords(lb('12345678.9'), 'down')).toBe('12,345,678 lb');
  });
});

describe('two figures of which the first is too large beside the second', () => {
  const crossed = (large: Quantity<Unit>, small: Quantity<Unit>): string => showCrossed(large, small).join(' > ');
  it('read so, however close they are', () => {
    expect(crossed(third(10), lb(10))).toBe('10.34 lb > 10 lb');
    expect(crossed(third(10), lb('10.3333333333'))).toBe('10.34 lb > 10.33 lb');
    expect(crossed(lb('10.00000001'), lb(10))).toBe('10.01 lb > 10 lb');
    expect(crossed(lb(10), lb('9.99999999'))).toBe('10 lb > 9.99 lb');
  });
  it('read alike where they are equal, and in their own units', () => {
    expect(crossed(third(10), third(10))).toBe('10.33 lb > 10.33 lb');
    expect(crossed(third(10), quantity('4.5333333333', 'kg'))).toBe('10.34 lb > 4.53 kg');
  });
});

describe('a figure beside a text that it must not read like', () => {
  it('has as many more decimals as that takes', () => {
    expect(showApart(lb('10000.0004'), '10,000 lb')).toBe('10,000.0004 lb');
    expect(showApart(lb('10000.0004'), '0 lb')).toBe('10,000 lb');
    expect(showApart(lb('0.00012345678'), '0 lb')).toBe('0.0001 lb');
    expect(showApart(lb(10), '10 lb')).toBe('10 lb');
  });
});
