/** Wheel torques, hubs and brake sizes, typed a second time and compared whole. */
import { describe, expect, it } from 'vitest';
import { brakeSizes } from '../../src/axles/data/brake-sizes.js';
import { hubConventions } from '../../src/axles/data/hub-conventions.js';
import { wheelTorque, type WheelTorqueRow } from '../../src/axles/data/wheel-torque.js';

// axle and running-gear makers' manuals and pages, 2014 and undated; chart c and the stages of chart b on 9/16: a trailer owner manual: wheel | stud | chart | stage 1 | stage 2 | final, ft lb
const torques = `
12-13 in|1/2|a|20-25|35-40|50-60
12-13 in|1/2|b|||50-65
12-13 in|1/2|c|20-25|40-50|50-75
14-16 in and 16.5x6.75|1/2|a|20-25|50-60|90-120
16 in and 16.5x6.75|9/16|a|20-25|60-70|120-130
16 in and 16.5x6.75|9/16|b|20-25|40-50|90-120
16.5x9.75||a|55-60|120-125|175-225
14.5 demountable|5/8|a|||85-95
16 dual and 17.5, cone nut|5/8|a|50-60|100-120|190-210
16 dual and 17.5, cone nut|5/8|b|50-60|100-120|190-220
16 dual and 17.5, flange nut|5/8|a|50-60|150-200|275-325
16 dual and 17.5, flange nut|5/8|b|50-60|90-200|275-325
16 in|5/8|c|||275-325
17.5 in|5/8|c|||275-325`;

// web pages and a trade parts page; makers vary: axle from | to | inner | outer | bolt circles with their grades
const hubs = `
2000|2200|L44649|L44649|4-4 memory; 5-4.5 memory
3500|3500|L68149|L44649|5-4.5 C; 5-4.75 memory; 5-5 memory
5200|6000|25580|15123|6-5.5 C
7000|7000|25580|14125A|8-6.5 memory`;

// trade parts guide: size | axle from | to
const brakes = `
10 x 2-1/4|2000|3500
12 x 2|5200|7000
12-1/4 heavy|8000|10000`;

const lines = (text: string): string[] => text.trim().split('\n');

describe('wheel hardware tables', () => {
  const rows: readonly WheelTorqueRow[] = wheelTorque.rows;
  it('stand as printed', () => {
    const range = (of: readonly [string, string] | undefined): string => of?.join('-') ?? '';
    expect(rows.map(({ wheel, stud, chart, stage1, stage2, final }) => [wheel, stud ?? '', chart, range(stage1), range(stage2), range(final)].join('|'))).toEqual(lines(torques));
    expect(hubConventions.rows.map((row) => [row.axleFromLb, row.axleToLb, row.innerBearing, row.outerBearing, row.boltCircles.map(({ circle, grade }) => `${circle} ${grade}`).join('; ')].join('|'))).toEqual(lines(hubs));
    expect(brakeSizes.rows.map(({ size, axleFromLb, axleToLb }) => [size, axleFromLb, axleToLb].join('|'))).toEqual(lines(brakes));
  });
  it('never fall from low to high, nor from stage to stage', () => {
    for (const { stage1, stage2, final } of rows) {
      const steps = [stage1, stage2, final].flatMap((range) => range ?? []).map(Number);
      const ranges = [stage1, stage2, final].filter((range) => range !== undefined);
      expect(ranges.every(([low, high]) => Number(low) < Number(high))).toBe(true);
      expect(steps).toEqual([...steps].sort((a, b) => a - b));
    }
  });
  it('keep what is second hand marked', () => {
    expect([hubConventions.source.grade, brakeSizes.source.grade]).toEqual(['C', 'C']);
  });
});
