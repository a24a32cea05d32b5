import { describe, expect, it } from 'vitest';
import { type JackQuestion, jackLoad, type LeverScaleQuestion, leverScale } from '../../src/towing/index.js';
import { foot, inch, lb, percent, ratio, show, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const lever: LeverScaleQuestion = {
  reading: lb(220),
  beamTare: lb(20),
  pipeToTongue: foot(1),
  tongueToScale: foot(2),
  tongueRestsAt: 'coupler',
};

describe('the lever scale', () => {
  it('takes the beam off before it multiplies', () => {
    const read = rightOf(leverScale(lever));
    expect([read.tongue, read.factor].map(({ value }) => show(value))).toEqual(['600 lb', '3']);
    // the wrong answer: the beam left in gives 660 lb
    expect(show(rightOf(leverScale({ ...lever, beamTare: lb(0) })).tongue.value)).toBe('660 lb');
    expectReplays(read.tongue, read.factor, read.atPoint);
  });
  it('brings the load at the jack to the ball', () => {
    const read = rightOf(leverScale({ ...lever, tongueRestsAt: { jackBehindBall: inch(20), axlesAt: inch(200) } }));
    expect([read.atPoint, read.tongue].map(({ value }) => show(value))).toEqual(['600 lb', '540 lb']);
    expectReplays(read.tongue);
  });
  it('refuses what cannot be', () => {
    const tag = (change: Partial<LeverScaleQuestion>): string => leftOf(leverScale({ ...lever, ...change })).tag;
    expect(tag({ pipeToTongue: inch(0) })).toBe('NotAboveZero');
    expect(tag({ tongueToScale: inch(-1) })).toBe('BelowZero');
    expect(tag({ beamTare: lb(-1) })).toBe('BelowZero');
    expect(tag({ reading: lb(19) })).toBe('ReadingBelowTare');
    expect(tag({ tongueRestsAt: { jackBehindBall: inch(200), axlesAt: inch(200) } })).toBe('JackBehindAxles');
    expect(tag({ tongueRestsAt: { jackBehindBall: inch(20), axlesAt: inch(0) } })).toBe('NotAboveZero');
    expect(tag({ tongueRestsAt: { jackBehindBall: inch(-1), axlesAt: inch(200) } })).toBe('BelowZero');
  });
});

describe('the jack', () => {
  const jack: JackQuestion = {
    tongue: lb(1400),
    jackBehindBall: inch(20),
    axlesAt: inch(190),
    rating: lb(2000),
    margin: ratio(1),
  };
  it('carries more than the tongue load', () => {
    const { foot: load, check } = rightOf(jackLoad(jack));
    expect(showBrief(load.value, 1)).toBe('1,564.7 lb');
    expect([check.kind, check.verdict]).toEqual(['jack', 'within']);
    expectReplays(load, check.reserve, check.used);
  });
  it('is judged with the margin that was stated', () => {
    expect(rightOf(jackLoad({ ...jack, margin: percent(150) })).check.verdict).toBe('over');
    expect(rightOf(jackLoad({ ...jack, jackBehindBall: inch(0), margin: ratio('1.4285714') })).check.verdict).toBe(
      'within',
    );
  });
  it('gives back what the lever took: jack and ball are one lever', () => {
    const { foot: load } = rightOf(jackLoad(jack));
    const read = rightOf(
      leverScale({ ...lever, reading: load, beamTare: lb(0), tongueToScale: inch(0), tongueRestsAt: jack }),
    );
    expect(showBrief(read.tongue.value, 6)).toBe('1,400 lb');
  });
  it('refuses what cannot be', () => {
    const tag = (change: Partial<JackQuestion>): string => leftOf(jackLoad({ ...jack, ...change })).tag;
    expect(tag({ tongue: lb(0) })).toBe('NotAboveZero');
    expect(tag({ margin: ratio(0) })).toBe('NotAboveZero');
    expect(tag({ rating: lb(0) })).toBe('NotAboveZero');
    expect(tag({ jackBehindBall: inch(190) })).toBe('JackBehindAxles');
  });
});
