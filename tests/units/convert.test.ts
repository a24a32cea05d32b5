/** There and back is the same figure, for equality and not within a tolerance. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allUnits,
  convert,
  dimensionOf,
  kg,
  lb,
  type Quantity,
  quantity,
  show,
  type Unit,
} from '../../src/units/index.js';
import { decimals } from '../helpers/arbitraries.js';

/** Any two units of one dimension; the types are satisfied by naming one pair. */
const into = (q: Quantity<Unit>, unit: Unit): Quantity<Unit> =>
  convert(q as Quantity<'lb'>, unit as 'kg') as Quantity<Unit>;
const pairs = allUnits.flatMap((from) =>
  allUnits.filter((to) => to !== from && dimensionOf(to) === dimensionOf(from)).map((to) => [from, to] as const),
);

describe('round trips', () => {
  it('lb to kg to lb, and kg to lb to kg, for every whole figure from 1 to 20,000', () => {
    const changed: number[] = [];
    for (let n = 1; n <= 20_000; n += 1) {
      const pounds = convert(convert(lb(n), 'kg'), 'lb').value;
      const kilograms = convert(convert(kg(n), 'lb'), 'kg').value;
      if (!pounds.eq(n) || !kilograms.eq(n)) changed.push(n);
    }
    expect(changed).toEqual([]);
  });
  it('is what floating point fails for', () => {
    let wrong = 0;
    for (let n = 1; n <= 20_000; n += 1) if ((n * 0.45359237) / 0.45359237 !== n) wrong += 1;
    expect(wrong).toBeGreaterThan(1000);
  });
  it.each(pairs)('%s to %s and back, random decimals', (from, to) => {
    fc.assert(
      fc.property(decimals, (digits) => {
        const q = quantity(digits, from);
        expect(into(into(q, to), from).value.eq(q.value)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
  it('goes through a third unit and comes back', () => {
    fc.assert(
      fc.property(decimals, (digits) => {
        const q = quantity(digits, 'in');
        expect(convert(convert(convert(q, 'mi'), 'mm'), 'in').value.eq(q.value)).toBe(true);
      }),
    );
  });
  it('leaves a figure that is in the unit already untouched', () => {
    const q = lb('9200.125');
    expect(convert(q, 'lb')).toBe(q);
    expect(show(convert(kg(1150), 'kg'))).toBe('1,150 kg');
  });
});
