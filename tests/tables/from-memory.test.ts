/** Tables from memory, typed a second time and compared whole: they keep their mark. */
import { describe, expect, it } from 'vitest';
import { brakePerformance } from '../../src/axles/data/brake-performance.js';
import { bulkDensity } from '../../src/load/data/bulk-density.js';
import { slendernessLimits } from '../../src/members/data/slenderness-limits.js';

// 49 CFR 393.52(d), part B: row | force % | ft/s2 | service ft | emergency ft
const braking = `
B(1)|52.8|17|25|66
B(2)|43.5|14|35|85
B(3)|43.5|14|40|90`;

// loose material: lb/ft3 from | to
const loose = `
sand, dry|90|105
sand, wet|110|130
gravel|95|115
crushed stone|85|105
topsoil, loose|60|80
earth, wet|95|115
clay, wet|100|125
broken concrete|75|100
broken asphalt|70|95
bricks, stacked|100|125
mulch|15|35
compost|35|55
firewood, stacked|25|45
road salt|70|85
snow, packed|20|40
water|62.4|62.4`;

// cold-formed flats: part | greatest width over thickness | k
const flats = `
one free edge|60|0.43
web between two bends|200|24`;

const lines = (text: string): string[] => text.trim().split('\n');

describe('tables from memory', () => {
  it('stand as typed twice', () => {
    expect(brakePerformance.rows.map((row) => [row.clause, row.forcePercent, row.deceleration, row.serviceFt, row.emergencyFt].join('|'))).toEqual(lines(braking));
    expect(bulkDensity.rows.map(({ material, low, high }) => [material, low, high].join('|'))).toEqual(lines(loose));
    expect(slendernessLimits.rows.map(({ part, most, k }) => [part, most, k].join('|'))).toEqual(lines(flats));
  });
  it('keep the mark', () => {
    for (const { source } of [brakePerformance, bulkDensity, slendernessLimits]) expect(source.grade).toBe('memory');
  });
});
