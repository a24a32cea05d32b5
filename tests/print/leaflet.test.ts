/** The leaflet: half a page, bars to scale, and never an advice that goes past a limit. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { leaflet, leafletOf } from '../../src/print/index.js';
import { compare } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { rigs } from '../helpers/rigs.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const date = '28 November 2026';
const answer = (spec: unknown): Assessment => rightOf(assessJson(spec));
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('the leaflet', () => {
  it.each(rigs)('of $file is half a page of eighty columns in either units, and ends with the cautions', ({ spec }) => {
    for (const units of ['us', 'metric'] as const) {
      const text = leaflet(answer(spec), { date, units });
      expect(text.split('\n').length).toBeLessThanOrEqual(48);
      expect(text.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
      expect(text).not.toMatch(/undefined|NaN|\[object/);
      expect(flat(text)).toMatch(/Not a certificate\..*no safe speed.*licensed engineer\. $/);
      expect(text).toContain(date);
      expect(text).toContain(manifest.version);
    }
  });
  it('says what the example is, may carry, where to park, what to do and what nobody has told', () => {
    const text = flat(leaflet(answer(tiltDeck()), { date }));
    for (const part of [
      'Marlow Yard TD-14, an invented trailer',
      'Carries 9,683 lb with 12 % of the gross weight on the tongue; set by ball mount tongue',
      'whole trailer [###################.] 12,650 of 14,000 lb (90.4%)',
      'Closest tongue against ball mount tongue: 93.2% used, reserve 109 lb',
      `Park excavator with its front between 9' 11 9/16" and 10' 7 1/16" behind the coupler.`,
      'Weigh the tongue when loaded: 1,265 lb to 1,600 lb.',
      '[ ] wheelbase and low point of a wheeled machine ______',
    ])
      expect(text).toContain(part);
  });
  it('draws a bar beyond its limit exactly when the check is over, and a full one on a tie', () => {
    const bars = (gvwr: string): string =>
      leaflet(answer(changed(tiltDeck(), 'trailer.gvwr', gvwr)), { date })
        .split('\n')
        .find((line) => line.startsWith('whole trailer')) ?? '';
    expect(bars('12,650 lb')).toContain('[####################] 12,650');
    expect(bars('12,649.9 lb')).toMatch(/\[####################\]X .* OVER$/);
    for (const spec of randomSpecs(60, 9000)) {
      const read = assessJson(spec);
      if (isLeft(read)) continue;
      const lines = leaflet(read.right, { date })
        .split('\n')
        .filter((line) => /\[#*\.*\]/.test(line));
      const { bars: drawn } = leafletOf(read.right, { date });
      expect(lines.length).toBe(drawn.length);
      for (const [i, { check }] of drawn.entries()) {
        expect(/\]X/.test(lines[i] ?? '')).toBe(check.verdict === 'over');
        expect(/ OVER$/.test(lines[i] ?? '')).toBe(check.verdict === 'over');
      }
    }
  });
  it('never asks for a tongue load above a limit on the tongue', () => {
    let asked = 0;
    for (const spec of [...rigs.map((rig) => rig.spec), ...randomSpecs(60, 3000)]) {
      const read = assessJson(spec);
      if (isLeft(read)) continue;
      const step = leafletOf(read.right, { date }).loading.find(({ tag }) => tag === 'weigh the tongue');
      for (const { id, limit } of read.right.checks) {
        if (step?.to === undefined || !/\/tongue$|tongue-rating$/.test(id)) continue;
        asked += 1;
        expect(compare((step.to as typeof limit).value, limit.value)).toBeLessThanOrEqual(0);
      }
    }
    expect(asked).toBeGreaterThan(50);
    const over = rigs.find(({ file }) => file.startsWith('07'))?.spec;
    expect(flat(leaflet(answer(over), { date }))).toContain(
      'No tongue load serves: the guideline begins at 1,310 lb, and no more than 1,000 lb is allowed.',
    );
  });
});
