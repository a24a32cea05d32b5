/** Load at the foot of the jack. */
import { describe, expect, it } from 'vitest';
import { type JackQuestion, jackLoad, type LeverScaleQuestion, leverScale } from '../../src/towing/index.js';
import { foot, inch, lb, percent, ratio, showBrief } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const lever: LeverScaleQuestion = {
  reading: lb(220),
  beamTare: lb(20),
  pipeToTongue: foot(1),
  tongueToScale: foot(2),
  tongueRestsAt: 'coupler',
};

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
