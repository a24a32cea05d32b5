import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { sureness } from '../../src/choose/index.js';
import { surenessText } from '../../src/print/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { proveSureness } from '../proofs/sureness.js';

describe('sureness over random rigs', () => {
  it('is never contradicted, and says no wider a range than the corners have', () => {
    const { figures, against } = proveSureness(600, 21, 8);
    expect(against).toEqual([]);
    for (const name of ['within', 'not sure', 'over', 'widths compared'] as const)
      expect(figures[name], name).toBeGreaterThan(10);
  }, 300_000);
});

describe('sureness of the example', () => {
  const assessment = rightOf(assessJson(tiltDeck()));
  it('is not sure of one check: the tongue on the ball mount', () => {
    const { sure, checks, weighNext } = rightOf(sureness(assessment));
    expect(sure).toBe('not sure');
    expect(checks.filter((check) => check.sure !== 'within').map(({ id }) => id)).toEqual(['tow/ball-mount/tongue']);
    expect(weighNext[0]?.path).toBe('cargo.0.balancePoint');
  });
  it('gives the range by hand: 3 % of the machine, an inch at each place, weighed figures as they stand', () => {
    const { checks } = rightOf(
      sureness(assessment, {
        byBasis: [{ basis: 'scale', dimension: 'mass', amount: '0 lb', source: 'as weighed' }],
        byPath: { 'cargo.0.balancePoint': '1 in' },
      }),
    );
    const one = checks.find(({ id }) => id === 'tow/ball-mount/tongue')!;
    // tongue = 520 + W (x - a) / x, x the middle of the axles, a the place of the balance point
    const tongue = (weight: number, axles: number, place: number): number => 520 + (weight * (axles - place)) / axles;
    expect(one.least.value.toNumber()).toBeCloseTo(1600 - tongue(9270, 205, 180), 4);
    expect(one.most.value.toNumber()).toBeCloseTo(1600 - tongue(8730, 203, 184), 4);
  });
  it('becomes sure when the places are measured', () => {
    const places = ['cargo.0.front', 'cargo.0.balancePoint', 'trailer.axles.0.at', 'trailer.axles.1.at'];
    const measured = Object.fromEntries(places.map((path) => [path, '0.25 in']));
    const better = sureness(assessment, { byPath: { ...measured, 'cargo.0.weight': '1 %' } });
    expect(rightOf(better).sure).toBe('within');
  });
  it('is over for sure when it is far over', () => {
    const heavy = rightOf(assessJson(changed(tiltDeck(), 'cargo.0.weight', '14,000 lb')));
    expect(rightOf(sureness(heavy)).sure).toBe('over');
  });
  it('takes an exact tie as within', () => {
    const tie = rightOf(assessJson(changed(tiltDeck(), 'trailer.gvwr', '12,650 lb')));
    const exactly = { byBasis: [], byPath: {} };
    const labels = rightOf(sureness(tie, exactly)).inputs.map(({ path }) => [path, '0 %'] as const);
    const { checks } = rightOf(sureness(tie, { byPath: Object.fromEntries(labels) }));
    expect(checks.find(({ id }) => id === 'gvwr')).toMatchObject({ sure: 'within' });
    const lighterOnly = rightOf(sureness(tie, { byPath: { ...Object.fromEntries(labels), 'trailer.gvwr': '1 lb' } }));
    expect(lighterOnly.checks.find(({ id }) => id === 'gvwr')?.sure).toBe('not sure');
  });
  it('tells a tie by its decimals: a hair more than the rating is over for sure', () => {
    const gvwr = (weight: string) => {
      const rig = changed(changed(tiltDeck(), 'trailer.gvwr', '12,650 lb'), 'cargo.0.weight', weight);
      const assessment = rightOf(assessJson(rig));
      const still = rightOf(sureness(assessment)).inputs.map(({ path }) => [path, '0 %'] as const);
      const { checks } = rightOf(sureness(assessment, { byPath: Object.fromEntries(still) }));
      return checks.find(({ id }) => id === 'gvwr')?.sure;
    };
    expect(['8,999.9999999999 lb', '9,000 lb', '9,000.0000000001 lb'].map(gvwr)).toEqual(['within', 'within', 'over']);
  });
  it('prints what is not sure and what to weigh', () => {
    const text = surenessText(rightOf(sureness(assessment)));
    expect(text).toContain('not sure: tongue against ball mount tongue, reserve');
    expect(text.replace(/\s+/g, ' ')).toContain(
      'weigh or measure next: excavator balance point (cargo.0.balancePoint), now good to 2 in',
    );
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
});

describe('tolerances that cannot be', () => {
  const assessment = rightOf(assessJson(tiltDeck()));
  it.each([
    ['-1 %', 'a share'],
    ['-2 in', 'a share'],
    ['5 lb', 'a share'],
    ['100 %', 'a share'],
    ['some', 'a share'],
  ])('%s for a place', (amount) => {
    const error = leftOf(sureness(assessment, { byPath: { 'cargo.0.front': amount } }));
    expect(error).toMatchObject({ tag: 'UnusableFigure', path: 'tolerances.byPath.cargo.0.front', found: amount });
  });
  it('for a figure that is not there', () => {
    const error = leftOf(sureness(assessment, { byPath: { 'cargo.0.wieght': '1 %' } }));
    expect(error).toMatchObject({ tag: 'NotInTheSpec', path: 'cargo.0.wieght' });
    expect(error.tag === 'NotInTheSpec' && error.nearest[0]).toBe('cargo.0.weight');
  });
});
