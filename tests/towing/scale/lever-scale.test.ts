/** The lever scale. */
import { describe, expect, it } from 'vitest';
import { type LeverScaleQuestion, leverScale } from '../../../src/towing/index.js';
import { foot, inch, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

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
  it('reads nothing where the beam weighs all of it', () => {
    const none = rightOf(leverScale({ ...lever, reading: lb(20), tongueToScale: inch(0) }));
    expect([none.tongue, none.factor].map(({ value }) => show(value))).toEqual(['0 lb', '1']);
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
