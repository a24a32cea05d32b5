/** Tongue by lever and by difference: the printed factors, and the page that prints a wrong one. */
import { describe, expect, it } from 'vitest';
import { leverScale, tongueByDifference } from '../../src/towing/index.js';
import { converted } from '../../src/trace/index.js';
import { foot, kg, lb, show, showBrief } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const factor = (pipeToTongue: number, tongueToScale: number): string =>
  show(
    rightOf(
      leverScale({
        reading: lb(200),
        beamTare: lb(0),
        pipeToTongue: foot(pipeToTongue),
        tongueToScale: foot(tongueToScale),
        tongueRestsAt: 'coupler',
      }),
    ).factor.value,
  );

describe('the lever', () => {
  it('multiplies by the printed factors', () => {
    // hitch and manual how-to pages; one trailer maker manual: 1 + 2 ft times 3, 1 + 3 ft times 4
    expect([factor(1, 2), factor(1, 3)]).toEqual(['3', '4']);
  });
  it('does not keep times 3 when the scale moves out', () => {
    // published error: a how-to page moves the scale to 3 or 4 ft and keeps times 3; right are 4 and 5
    expect([factor(1, 3), factor(1, 4)]).toEqual(['4', '5']);
    const read = rightOf(
      leverScale({
        reading: lb(150),
        beamTare: lb(0),
        pipeToTongue: foot(1),
        tongueToScale: foot(4),
        tongueRestsAt: 'coupler',
      }),
    );
    expect(show(read.tongue.value)).toBe('750 lb');
    expect(show(read.tongue.value)).not.toBe('450 lb');
    expectReplays(read.tongue, read.factor);
  });
});

describe('whole trailer less axles', () => {
  it('is 240 kg of 2,890 and 2,650', () => {
    // web example, reproduced by statics: ATM 2,890 kg, GTM 2,650 kg
    const { tongue, notes } = rightOf(tongueByDifference(kg(2890), kg(2650)));
    expect(showBrief(converted(null, tongue, 'kg').value, 9)).toBe('240 kg');
    expect(notes).toEqual([]);
    expectReplays(tongue);
  });
});
