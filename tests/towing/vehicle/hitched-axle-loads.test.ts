import { describe, expect, it } from 'vitest';
import { type HitchedQuestion, hitchedAxleLoads, wordsForTowing } from '../../../src/towing/index.js';
import { weakestInputs } from '../../../src/trace/index.js';
import { inch, lb, ratio, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const truck = { hitch: 'ball behind', front: lb(2800), rear: lb(2700), tongue: lb(850) } as const;
const tags = (question: HitchedQuestion): string[] => rightOf(hitchedAxleLoads(question)).notes.map(({ tag }) => tag);

describe('hitched axle loads', () => {
  it('takes the stated bound for an unknown overhang and says so', () => {
    const hitched = rightOf(hitchedAxleLoads({ ...truck, overhang: 'unknown' }));
    expect([hitched.ontoRear, hitched.rear].map(({ value }) => show(value))).toEqual(['1,275 lb', '3,975 lb']);
    expect(hitched.notes.map(({ tag }) => tag)).toEqual(['OverhangUnknown']);
    expect(weakestInputs(hitched.rear).basis).toBe('estimated');
    expect(hitched.offFront.why).toMatchObject({ source: { title: expect.stringContaining('owner manual') } });
    const measured = rightOf(hitchedAxleLoads({ ...truck, overhang: { ofWheelbase: ratio('0.5') } }));
    expect(measured.offFront.why).toMatchObject({ source: undefined });
    expectReplays(hitched.front, hitched.rear);
  });
  it('names its steps without a way of standing, as there is one only', () => {
    const { front, offFront, ontoRear } = rightOf(hitchedAxleLoads({ ...truck, overhang: 'unknown' }));
    expect([front, offFront, ontoRear].map(({ why }) => why.symbol)).toEqual([
      'front axle, hitched',
      'taken off the front axle',
      'put on the rear axle',
    ]);
  });
  it('answers for a negative tongue with a note', () => {
    const hitched = rightOf(hitchedAxleLoads({ ...truck, overhang: inch(60), wheelbase: inch(120), tongue: lb(-200) }));
    expect([hitched.front, hitched.rear].map(({ value }) => show(value))).toEqual(['2,900 lb', '2,400 lb']);
    expect(hitched.notes.map(({ tag }) => tag)).toEqual(['NegativeTongue']);
    expectReplays(hitched.front, hitched.rear);
  });
  it('notes a ball right over the axle and front wheels that lift', () => {
    expect(tags({ ...truck, overhang: inch(0), wheelbase: inch(120) })).toEqual(['BallOverAxle']);
    expect(tags({ ...truck, overhang: inch(60), wheelbase: inch(120), tongue: lb(5600) })).toEqual([]);
    expect(tags({ ...truck, overhang: inch(60), wheelbase: inch(120), tongue: lb(5602) })).toEqual(['FrontAxleLifts']);
  });
  it('refuses a wheelbase of zero, a negative axle and a ball on the wrong side', () => {
    const base = { ...truck, overhang: inch(60), wheelbase: inch(120) };
    expect(leftOf(hitchedAxleLoads({ ...base, wheelbase: inch(0) }))).toMatchObject({
      tag: 'NotAboveZero',
      what: 'wheelbase',
    });
    expect(leftOf(hitchedAxleLoads({ ...base, front: lb(-1) }))).toMatchObject({
      tag: 'BelowZero',
      what: 'front axle, truck alone',
    });
    expect(leftOf(hitchedAxleLoads({ ...base, overhang: inch(-4) }))).toMatchObject({
      tag: 'HitchContradicts',
      hitch: 'ball behind',
      needed: 'an overhang of zero or more, or the hitch called a gooseneck',
    });
    expect(leftOf(hitchedAxleLoads({ ...base, hitch: 'gooseneck' }))).toMatchObject({
      tag: 'HitchContradicts',
      hitch: 'gooseneck',
      needed: 'an overhang of zero or less: the ball is ahead of the axle',
    });
    const ahead = leftOf(hitchedAxleLoads({ ...base, hitch: 'gooseneck', overhang: inch(-120) }));
    expect(wordsForTowing(ahead)).toBe('the overhang is -120 in; a gooseneck needs a ball behind the front axle');
  });
  it('keeps every branch it took', () => {
    const { decisions } = rightOf(hitchedAxleLoads({ ...truck, overhang: inch(60), wheelbase: inch(120) }));
    expect(decisions.map(({ comparison, holds }) => `${comparison} ${holds}`)).toEqual([
      '>= true',
      '>= true',
      '> true',
      '>= true',
      '> true',
      '= false',
      '< false',
      '< false',
    ]);
  });
});
