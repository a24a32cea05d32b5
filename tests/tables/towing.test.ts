/** The tables of the towing chapter, typed a second time and compared whole. */
import { describe, expect, it } from 'vitest';
import { couplerClasses } from '../../src/towing/data/coupler-classes.js';
import { hitchTestForceTable } from '../../src/towing/data/hitch-test-forces.js';
import type { PrintedStrength } from '../../src/towing/data/coupler-classes.js';

// Md. COMAR 11.13.08.04 and .10, current through Register Vol. 51 No. 26, 2024-12-27; chains: two secondary pages citing SAE J684 (July 2005)
// class | over | to | ball in | tension | compression | transverse | vertical tension | vertical compression | chain each
const couplers = `
1|0|2000|1.875|6000|6000|2000|2500|2500|2000
2|2000|3500|2|10500|10500|3000|4500|4500|3500
3|3500|5000|2|15000|15000|4000|7000|7000|5000
4|5000|10000||x3.0|x3.0|x1.0|x1.3|x1.4|`;

// Md. COMAR 11.13.08.10: step | component | slope | intercept | direction
const carrying = `
1|V|0.47|480|down
1|L|0.47|480|compressive
2|L|0.23|1530|tensile
2|V|0.15|0|down
3|L|0.23|1530|compressive
3|V|0.15|0|down
4|T|0.2|500|left
5|T|0.2|500|right`;
const distributing = `
1|V|0.045|1650|down
1|M|0|51000|figure 2
2|L|0.067|2070|tensile
2|V|0.15|0|down
3|L|0.067|2070|compressive
3|V|0.15|0|down
4|T|0.2|500|left
5|T|0.2|500|right`;

const strength = (printed: PrintedStrength): string => ('lbf' in printed ? printed.lbf : `x${printed.times}`);

describe('coupler classes', () => {
  it('stand as printed', () => {
    const rows = couplerClasses.rows.map((row) => [
      row.couplerClass, row.overLb, row.maxLb, 'ballIn' in row ? row.ballIn : '', strength(row.tension), strength(row.compression), strength(row.transverse),
      strength(row.verticalTension), strength(row.verticalCompression), 'chainEachLb' in row ? row.chainEachLb : '',
    ].join('|'));
    expect(rows).toEqual(couplers.trim().split('\n'));
  });
  it('join without a gap and grow', () => {
    couplerClasses.rows.slice(1).forEach((row, i) => {
      expect(row.overLb).toBe(couplerClasses.rows[i]?.maxLb);
      expect(Number(row.maxLb)).toBeGreaterThan(Number(row.overLb));
    });
  });
});

describe('hitch test forces', () => {
  const printed = (hitch: string): string[] =>
    hitchTestForceTable.rows.filter((row) => row.hitch === hitch).map(({ step, component, slope, intercept, direction }) => [step, component, slope, intercept, direction].join('|'));
  it('stand as printed', () => {
    expect(printed('weight carrying')).toEqual(carrying.trim().split('\n'));
    expect(printed('weight distributing')).toEqual(distributing.trim().split('\n'));
  });
  it('presume a unit for the moment alone', () => {
    expect(hitchTestForceTable.rows.filter(({ unit }) => unit !== 'lb').map(({ component }) => component)).toEqual(['M']);
  });
});
