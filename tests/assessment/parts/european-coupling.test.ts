/** A European trailer: the tongue band of its place, and the values on the plate of its coupling. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { brief, briefOf, report } from '../../../src/print/index.js';
import { convert } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { rigs } from '../../helpers/rigs.js';
import { changed } from '../../helpers/specs.js';

const plant = rigs.find(({ file }) => file.startsWith('06'))?.spec as Record<string, unknown>;
const withoutBand = changed(plant, 'trailer.guideline', undefined);
const answer = (spec: unknown): Assessment => rightOf(assessJson(spec));
const change = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  answer(changes.reduce((spec, [path, value]) => changed(spec, path, value), withoutBand));
const kilograms = ({ payload }: Assessment): number | undefined =>
  payload?.anywhere && convert(payload.anywhere.weight.value, 'kg').value.toNumber();

describe('a 3,500 kg trailer with a nose limit of 150 kg', () => {
  it('is asked where it is towed: the American band is never taken silently', () => {
    const untold = change();
    expect(untold.notes.map(({ tag }) => tag)).toContain('PracticeNotTold');
    expect(untold.notChecked.some(({ what }) => what === 'tongue band of the place')).toBe(true);
    expect(briefOf(untold).open[0]?.what).toBe('tongue band of the place');
    expect(brief(untold)).toContain('whose practice it is (trailer.practice)');
    expect(report(untold)).toContain('European nose weights are a fraction of it');
  });
  it('carries by the European band what its nose limit allows at 7 % of the gross weight, less the empty trailer', () => {
    const told = change(['trailer.practice', 'Europe']);
    expect(told.notes.map(({ tag }) => tag)).not.toContain('PracticeNotTold');
    expect(kilograms(told)).toBeCloseTo(150 / 0.07 - 780, 6);
    // The American band would ask 15 % everywhere: 150 / 0.15 - 780, of which the trailer itself takes most.
    expect(kilograms(change(['trailer.practice', 'US and Canada']))).toBeCloseTo(150 / 0.15 - 780, 6);
    expect(kilograms(change(['trailer.practice', 'Australia']))).toBeCloseTo(150 / 0.1 - 780, 6);
  });
  it('is not asked where it brings its own band, nor where it is told in pounds', () => {
    expect(answer(plant).notes.map(({ tag }) => tag)).not.toContain('PracticeNotTold');
    const pounds = rigs.find(({ file }) => file.startsWith('03'))?.spec;
    expect(answer(pounds).notes.map(({ tag }) => tag)).not.toContain('PracticeNotTold');
  });
});

describe('the plate of the coupling', () => {
  const plate = (d: string, gvwr = '3500 kg'): Assessment =>
    change(['trailer.practice', 'Europe'], ['trailer.coupler.d', d], ['tow', { gvwr }]);
  it('is checked by D = g T R / (T + R): 17.1675 kN for twice 3.5 t (from memory), a tie within', () => {
    const verdict = (d: string): string | undefined =>
      plate(d).partChecks.find(({ id }) => id === 'coupler/d')?.verdict;
    expect([verdict('17.1675 kN'), verdict('17.1674 kN'), verdict('20 kN')]).toEqual(['within', 'over', 'within']);
    expect(plate('15 kN').verdict).toBe('over');
    expect(brief(plate('15 kN'), { units: 'metric' })).toMatch(/drawbar pull over coupling D by \d+ kg/);
  });
  it('leaves D open without the tow vehicle, and asks nothing that is not marked', () => {
    const open = change(['trailer.practice', 'Europe'], ['trailer.coupler.d', '17.2 kN']);
    expect(open.notChecked.some(({ what }) => what === 'drawbar pull against coupling D')).toBe(true);
    expect(change().notChecked.some(({ what }) => what.startsWith('drawbar'))).toBe(false);
  });
  it('asks Dc and V of a heavy centre-axle trailer, with all of its mass on the axles, and says so', () => {
    const heavy = change(
      ['trailer.practice', 'Europe'],
      ['trailer.gvwr', '9000 kg'],
      ['trailer.coupler', { gross: '9000 kg', tongue: '900 kg', dc: '70 kN', v: '20 kN' }],
      ['tow', { gvwr: '18000 kg' }],
    );
    const ids = heavy.partChecks.filter(({ id }) => id.startsWith('coupler/')).map(({ id, verdict }) => [id, verdict]);
    // Dc = 9.81 x 18 x 9 / 27 = 58.86 kN; V = 2.4 x 1.114 x 9 = 24.1 kN with 3.8 m of deck on a drawbar of 3.6 m.
    expect(ids).toEqual([
      ['coupler/dc', 'within'],
      ['coupler/v', 'over'],
    ]);
    expect(heavy.notes.map(({ tag }) => tag)).toContain('CAsGvwr');
  });
});
