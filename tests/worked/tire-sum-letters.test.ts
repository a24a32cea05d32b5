/** The tires of an axle must bear its GAWR: agency letters nht76-1.42, 77-3.29, aiam0583, nht76-1.47. */
import { describe, expect, it } from 'vitest';
import { axleSystem } from '../../src/axles/index.js';
import { tireLoadRating } from '../../src/tires/index.js';
import { given } from '../../src/trace/index.js';
import { lb, show, toWire } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { workingsIn } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const axle = (gawr: number, each: string, count: number) =>
  axleSystem({ gawr: lb(gawr), tires: { each: given('tire', lb(each), 'label'), count } }, 'axle 1');

describe('49 CFR 571.120 S5.1.2: the sum of tire ratings is at least the GAWR', () => {
  it('nht76-1.42: at the GAWR is enough', () => {
    const system = rightOf(axle(7000, '3500', 2));
    expectReplays(...workingsIn(system));
    expect([
      show(system.rating.value),
      system.checks.map(({ what, verdict, reserve }) => [what, verdict, show(reserve.value)]),
    ]).toEqual(['7,000 lb', [['axle 1 tires against GAWR', 'within', '0 lb']]]);
  });
  it('77-3.29 (1977-07-15): 95 percent of it is not', () => {
    expect(leftOf(axle(7000, '3325', 2))).toMatchObject({
      tag: 'GawrAboveParts',
      part: 'tires',
      gawr: toWire(lb(7000)),
      bears: toWire(lb(6650)),
    });
  });
  it('aiam0583 (1972), dual 8.25-20: four at 3,550 lb are 14,200 lb, below 17,500 lb', () => {
    expect(leftOf(axle(17500, '3550', 4))).toMatchObject({ part: 'tires', bears: toWire(lb(14200)) });
    expect(leftOf(axle(17500, '4050', 4))).toMatchObject({ bears: toWire(lb(16200)) });
    expect(rightOf(axle(14200, '3550', 4)).governed.governing.map(({ name }) => name)).toEqual(['GAWR', 'tires']);
  });
});

describe('nht76-1.47 (1976-11-17): a passenger-car tire on a trailer counts for its load over 1.10', () => {
  it('tire-1.10: two at 1,764 lb count for 3,207.27 lb', () => {
    const { rating } = rightOf(
      tireLoadRating({ designation: 'P225/75R15', molded: { single: lb(1764) } }, { fitment: 'single', on: 'trailer' }),
    );
    const system = rightOf(axleSystem({ tires: { each: rating, count: 2 } }, 'axle 1'));
    expectReplays(...workingsIn(system));
    expect(system.rating.value.value.toDecimalPlaces(2).toNumber()).toBe(3207.27);
    expect(rating.value.value.div(1764).toDecimalPlaces(4).toNumber()).toBe(0.9091);
    expect(leftOf(axleSystem({ gawr: lb(3208), tires: { each: rating, count: 2 } }, 'axle 1'))).toMatchObject({
      part: 'tires',
    });
    expect(
      rightOf(axleSystem({ gawr: lb(3207), tires: { each: rating, count: 2 } }, 'axle 1')).checks[0]?.verdict,
    ).toBe('within');
  });
});
