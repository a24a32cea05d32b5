/** Load limits: the steps of 49 CFR 575.6(a)(5), 567.4(g)(3), the agency letters, added weight. Sources beside the checks. */
import { describe, expect, it } from 'vitest';
import {
  addedWeightLimit,
  coupledAxleLoad,
  gvwrLowerBound,
  largestRatedCargo,
  placardLoadLeft,
  showsCapacity,
} from '../../src/rules/index.js';
import { given } from '../../src/trace/index.js';
import { convert, kg, lb, percent, show, showBrief } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { leftOf, orFail } from '../rules/helpers.js';

const people = (count: number, each: number) => Array.from({ length: count }, () => lb(each));

describe('placard load left', () => {
  it.each([
    // 49 CFR 575.6(a)(5) example, reproduced in a vehicle manual.
    [1400, people(5, 150), '650 lb'],
    // Vehicle owner manual, 2006. One copy prints the 750 lb of the second case as 136 kg: a misprint for 340.
    [1000, people(2, 150), '700 lb'],
    [1000, people(5, 150), '250 lb'],
    // Vehicle owner manual, 2011: what is left is for cargo and tongue load together.
    [1500, [lb(175)], '1,325 lb'],
    [1500, [lb(175), lb(195)], '1,130 lb'],
  ])('%i lb', (placard, inside, leftOver) => {
    const found = orFail(placardLoadLeft(lb(placard), inside));
    expect(show(found.value)).toBe(leftOver);
    expectReplays(found);
  });
  it('does not repeat the misprint of a manual of 2020: 640 kg less five of 70 kg is 290 kg, printed 300', () => {
    const found = orFail(
      placardLoadLeft(
        kg(640),
        Array.from({ length: 5 }, () => kg(70)),
      ),
    );
    expect(show(convert(found.value, 'kg'))).toBe('290 kg');
  });
  it('goes below zero when the people alone are too heavy', () => {
    expect(show(orFail(placardLoadLeft(lb(400), people(3, 150))).value)).toBe('-50 lb');
  });
  it('with nobody in it, is the placard', () => {
    expect(show(orFail(placardLoadLeft(lb(400), [])).value)).toBe('400 lb');
  });
});

describe('GVWR and rated cargo', () => {
  it('least GVWR, 567.4(g)(3) as read in letters nht76-3.20 and aiam0613', () => {
    const trailer = orFail(gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 0 }));
    expect(show(trailer.value)).toBe('7,000 lb');
    expect(show(orFail(gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 3 })).value)).toBe('7,450 lb');
    expectReplays(trailer);
  });
  it('largest rated cargo: figures of letter aiam1673, 15,000 less 8,600', () => {
    const found = orFail(largestRatedCargo({ gvwr: lb(15000), unloaded: lb(8600), seats: 0 }));
    expect(show(found.value)).toBe('6,400 lb');
    expectReplays(found);
  });
  it('largest rated cargo abroad: 2,000 kg less 700 kg (VSB 1 Revision 6, as quoted in a magazine)', () => {
    expect(show(convert(orFail(largestRatedCargo({ gvwr: kg(2000), unloaded: kg(700), seats: 0 })).value, 'kg'))).toBe(
      '1,300 kg',
    );
  });
  it('refuses half a seat', () => {
    expect(leftOf(gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 0.5 }))).toMatchObject({
      tag: 'OutOfRange',
      what: 'seats',
      found: '0.5',
    });
  });
});

describe('axle load at GVWR, coupled (rule of letter nht76-3.20)', () => {
  it.each([
    [7000, '10', '700 lb', '6,300 lb', 6300],
    [14000, '12', '1,680 lb', '12,320 lb', 12320],
  ])('%i lb, %s percent', (gvwr, share, tongue, axleLoad, least) => {
    const found = orFail(coupledAxleLoad({ gvwr: lb(gvwr), tongueShare: percent(share), sumOfGawrs: lb(least) }));
    expect([show(found.tongue.value), show(found.axleLoad.value), found.check.verdict]).toEqual([
      tongue,
      axleLoad,
      'within',
    ]);
    expect(
      orFail(coupledAxleLoad({ gvwr: lb(gvwr), tongueShare: percent(share), sumOfGawrs: lb(least - 1) })).check.verdict,
    ).toBe('over');
    expectReplays(found.axleLoad, found.check.reserve);
  });
  it('a sum of GAWRs below the GVWR is no fault by itself', () => {
    expect(
      orFail(coupledAxleLoad({ gvwr: lb(15400), tongueShare: percent('9.5'), sumOfGawrs: lb(14000) })).check.verdict,
    ).toBe('within');
    expect(
      orFail(coupledAxleLoad({ gvwr: lb(15400), tongueShare: percent(9), sumOfGawrs: lb(14000) })).check.verdict,
    ).toBe('over');
  });
  it('takes a trailer that rests on its axles alone', () => {
    const found = orFail(coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(0), sumOfGawrs: lb(7000) }));
    expect([show(found.axleLoad.value), found.check.verdict]).toEqual(['7,000 lb', 'within']);
  });
  it.each(['-1', '100'])('refuses a share of %s percent', (share) => {
    expect(
      leftOf(coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(share), sumOfGawrs: lb(7000) })),
    ).toMatchObject({ tag: 'OutOfRange', what: 'tongue share' });
  });
});

describe('added weight limit: least of 1.5 percent and 100 lb (final rule of 2007-12-04, 72 FR 68442)', () => {
  it.each([
    [5000, '75 lb'],
    [7000, '100 lb'],
    [10000, '100 lb'],
    [10001, '100 lb'],
    [6666, '99.99 lb'],
    [6667, '100 lb'],
  ])('%i lb: %s', (gvwr, limit) => {
    const found = orFail(addedWeightLimit(lb(gvwr)));
    expect(showsCapacity(given('GVWR', lb(gvwr), 'label')).holds).toBe(gvwr <= 10000);
    expect(showBrief(found.value)).toBe(limit);
    expectReplays(found);
  });
});
