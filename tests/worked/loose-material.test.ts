/** Loose material by volume: water at its handbook density, densities of one's own, what no row holds. */
import { describe, expect, it } from 'vitest';
import { bulkMaterials, bulkWeight } from '../../src/load/index.js';
import { convert, kg, lbPerFt3, quantity, show } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('loose material by volume', () => {
  it('water: a cubic metre is 1,000 kg, to half a percent (handbook density of cool water, from memory)', () => {
    const { least, most } = rightOf(bulkWeight(quantity(1, 'ft3'), 'water'));
    expect(show(least.value)).toBe(show(most.value));
    const cubicMetre = 35.3146667 * plain(most);
    expect(Math.abs(cubicMetre / pounds(1000) - 1)).toBeLessThan(0.005);
  });
  it('a box of 2 cubic yards of gravel, by hand: 54 x 95 to 54 x 115', () => {
    const { least, most } = rightOf(bulkWeight(quantity(54, 'ft3'), 'gravel'));
    expect([plain(least), plain(most)]).toEqual([5130, 6210]);
    expectReplays(most);
  });
  it('takes densities of a ticket, and a table of the yard', () => {
    const ticket = { low: quantity(1600, 'kg/m3'), high: quantity(1600, 'kg/m3') } as const;
    expect(plain(rightOf(bulkWeight(quantity(10, 'ft3'), ticket)).most)).toBeCloseTo(998.85, 1);
    const own = { ...bulkMaterials, rows: [{ material: 'our sand', low: '100', high: '102' }] };
    expect(plain(rightOf(bulkWeight(quantity(1, 'ft3'), 'our sand', own)).most)).toBe(102);
  });
  it('refuses what it has no row for, no volume, and densities the wrong way round', () => {
    expect(leftOf(bulkWeight(quantity(1, 'ft3'), 'gravle'))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(bulkWeight(quantity(0, 'ft3'), 'gravel')).tag).toBe('OutsideItsRange');
    const upside = { low: lbPerFt3(100), high: lbPerFt3(90) };
    expect(leftOf(bulkWeight(quantity(1, 'ft3'), upside)).tag).toBe('OutsideItsRange');
  });
  it('has rows with the low end first', () => {
    for (const { low, high, material } of bulkMaterials.rows) expect(Number(low) <= Number(high), material).toBe(true);
  });
});

const pounds = (kilograms: number): number => convert(kg(kilograms), 'lb').value.toNumber();
