import { describe, expect, it } from 'vitest';
import { tightest } from '../../src/ratings/index.js';
import { type WeightDistributionQuestion, weightDistribution } from '../../src/towing/index.js';
import { inch, lb, percent, quantity, ratio, show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const rig: WeightDistributionQuestion = {
  front: lb(3200),
  rear: lb(2600),
  gross: lb(7000),
  tongue: lb(1000),
  wheelbase: inch(130),
  overhang: inch(65),
  axlesAt: inch(200),
  bars: { restore: percent(50) },
};

describe('weight distribution', () => {
  it('checks the rear axle with bars off, and the trailer axles both ways', () => {
    const wd = rightOf(
      weightDistribution({ ...rig, ratings: { front: lb(3400), rear: lb(4000), trailerAxles: lb(6100) } }),
    );
    const verdicts = (side: 'barsOff' | 'barsOn'): string[] =>
      wd.findings[side].checks.map(({ what, verdict }) => `${what}: ${verdict}`);
    expect(verdicts('barsOff')).toEqual([
      'tow vehicle front axle against tow vehicle front GAWR, bars off: within',
      'axle group load against axle group, bars off: within',
      'tow vehicle rear axle against tow vehicle rear GAWR, bars off: over',
    ]);
    // 6,000 lb on the trailer axles passes with bars off; 6,122.6 lb does not pass with bars on
    expect(verdicts('barsOn')).toEqual([
      'tow vehicle front axle against tow vehicle front GAWR, bars on: within',
      'axle group load against axle group, bars on: over',
    ]);
    // the wrong answer would be: bars on, the rear axle carries 3,727 lb and looks fine on 4,000 lb
    expect(wd.barsOn.rear.value.value.lt(4000)).toBe(true);
    expect(show(wd.barsOff.rear.value)).toBe('4,100 lb');
    expectReplays(...tightest(wd.findings.barsOn.checks).map(({ reserve }) => reserve), wd.barsOff.rear);
  });
  it('names what was not checked', () => {
    const { findings } = rightOf(weightDistribution(rig));
    expect(findings.barsOff.checks).toEqual([]);
    expect(findings.barsOff.notChecked.map(({ missing }) => missing)).toEqual([
      ['tow vehicle front GAWR'],
      ['axle group'],
      ['tow vehicle rear GAWR'],
    ]);
  });
  it('reads the four ways of saying it as one', () => {
    const byGain = rightOf(weightDistribution({ ...rig, bars: { trailerGain: lb(300) } }));
    const byMoment = rightOf(weightDistribution({ ...rig, bars: { moment: quantity(5000, 'lb*ft') } }));
    const byBars = rightOf(weightDistribution({ ...rig, bars: { barLoad: lb(2000), barLength: inch(30) } }));
    expect([byGain, byMoment, byBars].map(({ moment }) => show(moment.value))).toEqual(
      Array(3).fill('60,000 lb\u00b7in'),
    );
    expectReplays(byGain.barsOn.rear, byMoment.barsOn.rear, byBars.barsOn.rear);
  });
  it('notes more than all, and what cannot be restored', () => {
    const more = rightOf(weightDistribution({ ...rig, bars: { trailerGain: lb(300) } }));
    expect(more.notes.map(({ tag }) => tag)).toEqual(['RestoresMoreThanAll']);
    const all = rightOf(weightDistribution({ ...rig, bars: { restore: ratio(1) } }));
    expect(all.notes).toEqual([]);
    const over = rightOf(weightDistribution({ ...rig, overhang: inch(0), bars: { trailerGain: lb(100) } }));
    expect(over.restored).toBeUndefined();
    expect(over.notes.map(({ tag }) => tag)).toEqual(['BallOverAxle', 'NothingToRestore']);
  });
  it('hangs hitch parts that were not scaled on the ball; the fraction is of what the tongue alone takes', () => {
    const wd = rightOf(weightDistribution({ ...rig, hitchHardware: lb(100) }));
    // On the ball 1,100 lb, lever 65/130: 550 lb off the front, 1,650 lb onto the rear; half of the tongue's own 500 lb comes back.
    expect([wd.barsOff.front, wd.barsOff.rear, wd.ontoFront].map(({ value }) => show(value))).toEqual([
      '2,650 lb',
      '4,250 lb',
      '250 lb',
    ]);
    expect(show(wd.barsOff.trailerAxles.value)).toBe('6,000 lb');
    expect(wd.restored?.value.value.toNumber()).toBe(0.5);
    expectReplays(wd.barsOff.front, wd.barsOff.rear, wd.ontoFront, wd.moment);
  });
  it('answers where the whole trailer rests on the ball, and says when the front wheels lift', () => {
    const all = rightOf(weightDistribution({ ...rig, tongue: lb(7000) }));
    expect(show(all.barsOff.trailerAxles.value)).toBe('0 lb');
    expect(all.notes.map(({ tag }) => tag)).toEqual(['FrontAxleLifts']);
    expect(rightOf(weightDistribution({ ...rig, tongue: lb(6400) })).notes).toEqual([]);
    expect(
      rightOf(weightDistribution({ ...rig, tongue: lb(-100), bars: { trailerGain: lb(0) } })).notes.map(
        ({ tag }) => tag,
      ),
    ).toEqual(['NegativeTongue', 'NothingToRestore']);
  });
  it('refuses what cannot be', () => {
    const tag = (change: Partial<WeightDistributionQuestion>): string =>
      leftOf(weightDistribution({ ...rig, ...change })).tag;
    expect(tag({ overhang: inch(-4) })).toBe('BarsNeedBallBehind');
    expect(tag({ overhang: inch(0) })).toBe('NothingToRestore');
    expect(tag({ wheelbase: inch(0) })).toBe('NotAboveZero');
    expect(tag({ tongue: lb(7001) })).toBe('TongueAboveGross');
    expect(tag({ bars: { trailerGain: lb(-20) } })).toBe('BelowZero');
    expect(tag({ bars: { restore: percent(120) } })).toBe('NotAShare');
    expect(tag({ ratings: { rear: lb(0) } })).toBe('NotAboveZero');
  });
});
