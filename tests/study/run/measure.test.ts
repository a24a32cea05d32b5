/** Which figures a study prints of an assessment, and what it refuses where types did not check. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import { checkLoad, rating, weight } from '../../../src/ratings/index.js';
import { type Measure, onlyFigures, payloadByLimit, standardMeasure } from '../../../src/study/run/measure.js';
import { type Derived, given } from '../../../src/trace/index.js';
import { lb, show } from '../../../src/units/index.js';

const figure = (pounds: number): Derived<'lb'> => given('figure', lb(pounds), 'stated');
const check = (limit: number) => checkLoad(rating('GVWR', lb(limit), { part: `${limit}` }), weight('gross', lb(900)));
const assessed = (parts: object): Assessment => ({ weights: {}, checks: [], ...parts }) as unknown as Assessment;
const printed = (measure: Measure, assessment: Assessment) =>
  Object.fromEntries(Object.entries(measure(assessment)).map(([name, { value }]) => [name, show(value)]));

describe('the usual figures', () => {
  it('are what is left of each rating and the least of it, from one check on', () => {
    expect(printed(standardMeasure, assessed({}))).toEqual({});
    expect(printed(standardMeasure, assessed({ checks: [check(1000)] }))).toEqual({
      'tightest reserve': '100 lb',
      'left: gross against 1000 GVWR': '100 lb',
    });
    expect(printed(standardMeasure, assessed({ checks: [check(1000), check(940)] }))).toMatchObject({
      'tightest reserve': '40 lb',
    });
  });
  it('are weights, tongue and payload as far as they are known', () => {
    const weights = { curb: figure(1), gross: figure(2), balance: { tongue: figure(3), tongueShare: figure(4) } };
    expect(printed(standardMeasure, assessed({ weights, payload: { best: { weight: figure(5) } } }))).toEqual({
      'empty weight': '1 lb',
      'gross weight': '2 lb',
      'tongue load': '3 lb',
      'tongue share': '4 lb',
      payload: '5 lb',
    });
  });
  it('of a payload are those of each limit', () => {
    const limits = [
      { name: 'GVWR', limit: figure(7) },
      { name: 'coupler', limit: figure(8) },
    ];
    expect(printed(payloadByLimit, assessed({ payload: { best: { limits } } }))).toEqual({
      'payload by GVWR': '7 lb',
      'payload by coupler': '8 lb',
    });
    expect(printed(payloadByLimit, assessed({}))).toEqual({});
  });
});

describe('a measure without types', () => {
  const asked = (made: unknown) => {
    const { measure, refusal } = onlyFigures((() => made) as unknown as Measure);
    return { figures: Object.keys(measure(assessed({}))), refusal: refusal() };
  };
  it('is asked for figures, and may leave some out', () => {
    expect(asked({ a: figure(1), b: undefined })).toEqual({ figures: ['a'], refusal: undefined });
    for (const stray of [5, 'text', null, {}, { why: null }, { why: {} }, { why: 5 }])
      expect(asked({ a: figure(1), b: stray }), JSON.stringify(stray)).toMatchObject({
        figures: ['a'],
        refusal: { tag: 'UnusableVariation', path: 'measure.b', needed: 'a figure with its working' },
      });
  });
  it('is refused where it gives no record', () => {
    for (const none of [undefined, null, 5, 'text'])
      expect(asked(none), String(none)).toMatchObject({ figures: [], refusal: { path: 'measure' } });
  });
});
