/** Brake rules of the carrier part: 49 CFR 393.42(b) and 393.48(d). */
import { describe, expect, it } from 'vitest';
import { brakeException, surgeBrakes } from '../../src/rules/index.js';
import { kg, lb, show } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { leftOf, orFail } from '../rules/helpers.js';

describe('light-trailer exception', () => {
  it('full trailer, 3,000 lb on its axles behind 3,400 lb of axles: brakes (trade compliance question-and-answer)', () => {
    const found = orFail(
      brakeException({
        kind: 'full trailer',
        gross: lb(3000),
        trailerAxleWeights: lb(3000),
        towingAxleWeights: lb(3400),
      }),
    );
    expect(show(found.shareLimit.value)).toBe('1,360 lb');
    expect(found.rule.clause).toBe('49 CFR 393.42(b)(4)');
    expect(found.excepted).toBe(false);
    expectReplays(found.shareLimit, ...found.distances);
  });
  it('semitrailer, 300 lb on a tow vehicle of 5,000 lb: none asked (FMCSA guidance question 3 applied)', () => {
    const found = orFail(
      brakeException({
        kind: 'semitrailer',
        gross: lb(3000),
        weightOnTowVehicle: lb(300),
        towingAxleWeights: lb(5000),
      }),
    );
    expect(show(found.shareLimit.value)).toBe('2,000 lb');
    expect(found.rule.clause).toBe('49 CFR 393.42(b)(3)');
    expect(found.excepted).toBe(true);
    expectReplays(...found.distances);
  });
  it.each([
    ['2,000', 2000, true],
    ['2,001', 2001, false],
  ])('the share is exceeded above 40 percent, not on it: %s lb', (_, resting, excepted) => {
    expect(
      orFail(
        brakeException({
          kind: 'semitrailer',
          gross: lb(3000),
          weightOnTowVehicle: lb(resting),
          towingAxleWeights: lb(5000),
        }),
      ).excepted,
    ).toBe(excepted);
  });
  it('takes a hitch that is lifted, but no trailer without weight', () => {
    expect(
      orFail(
        brakeException({
          kind: 'semitrailer',
          gross: lb(2500),
          weightOnTowVehicle: lb(-50),
          towingAxleWeights: lb(5000),
        }),
      ).excepted,
    ).toBe(true);
    expect(
      leftOf(
        brakeException({ kind: 'semitrailer', gross: lb(0), weightOnTowVehicle: lb(0), towingAxleWeights: lb(5000) }),
      ),
    ).toMatchObject({ tag: 'OutOfRange', what: 'trailer gross' });
  });
  it('1,361 kg is above 3,000 lb, although the rule prints it (from memory) beside it', () => {
    expect(
      orFail(
        brakeException({
          kind: 'semitrailer',
          gross: kg(1361),
          weightOnTowVehicle: lb(300),
          towingAxleWeights: lb(5000),
        }),
      ).excepted,
    ).toBe(false);
  });
});

describe('surge brakes', () => {
  it.each([
    // 10,500 behind 6,000: also an example in a trade summary of the 2007 rule. The others apply the printed ratios.
    [10500, 6000, true],
    [10501, 6000, false],
    [12000, 6858, true],
    [12001, 9600, false],
    [20001, 30000, false],
    [12000, 6857, false],
    [12001, 9601, true],
    [20000, 16000, true],
    [20000, 15999, false],
  ])('trailer %i behind %i: %s', (trailer, tow, accepted) => {
    const found = orFail(surgeBrakes({ gvwr: lb(trailer), gross: 'not above GVWR' }, lb(tow)));
    expect(found.accepted).toBe(accepted);
    expect(found.rule.clause).toBe(trailer <= 12000 ? '49 CFR 393.48(d)(1)(i)' : '49 CFR 393.48(d)(1)(ii)');
    expectReplays(found.distance, ...(found.limit === undefined ? [] : [found.limit]));
  });
  it('takes the gross where it is above the GVWR, (d)(3) (from memory)', () => {
    expect(
      [9000, 9001].map((gross) => orFail(surgeBrakes({ gvwr: lb(7000), gross: lb(gross) }, lb(5143))).accepted),
    ).toEqual([true, false]);
  });
  it('prints no ratio from 20,001 lb on', () => {
    expect(orFail(surgeBrakes({ gvwr: lb(20001), gross: lb(9000) }, lb(30000))).limit).toBeUndefined();
  });
  it('refuses a rating of nothing', () => {
    expect(leftOf(surgeBrakes({ gvwr: lb(0), gross: lb(9000) }, lb(6000)))).toMatchObject({
      tag: 'OutOfRange',
      what: 'trailer GVWR',
    });
    expect(leftOf(surgeBrakes({ gvwr: lb(9000), gross: lb(9000) }, lb(-1)))).toMatchObject({
      tag: 'OutOfRange',
      what: 'tow vehicle GVWR',
    });
  });
});
