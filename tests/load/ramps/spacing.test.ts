/** Ramp spacings at which every tire rides on a ramp. */
import { describe, expect, it } from 'vitest';
import { rampSpacing } from '../../../src/load/index.js';
import { inch, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('rampSpacing', () => {
  const ramps = { rampWidth: inch(18), margin: inch(1), closest: inch(40), widest: inch(56) };
  it('fits every axle at once, and the slots', () => {
    const both = rightOf(
      rampSpacing(
        [
          { name: 'front axle', gauge: inch(54), tireWidth: inch(12) },
          { name: 'rear axle', gauge: inch(50), tireWidth: inch(14) },
        ],
        ramps,
      ),
    );
    // front 50 to 58, rear 48 to 52, slots 40 to 56
    expect([show(both.lower.at.value), show(both.upper.at.value), both.empty]).toEqual(['50 in', '52 in', false]);
    expect(both.upper.setBy.map(({ name }) => name)).toEqual(['rear axle']);
  });
  it('answers when no setting serves, with both sides named', () => {
    const none = rightOf(rampSpacing([{ name: 'front axle', gauge: inch(66), tireWidth: inch(12) }], ramps));
    expect(none.empty).toBe(true);
    expect(none.notes.at(-1)?.says).toBe(
      'No setting serves: front axle asks for 62 in or wider, widest setting for 56 in or closer.',
    );
  });
  it('answers when a tire is wider than the ramp', () => {
    const wide = rightOf(rampSpacing([{ name: 'front axle', gauge: inch(54), tireWidth: inch(17) }], ramps));
    expect([wide.empty, wide.notes[0]?.tag]).toEqual([true, 'TireWiderThanRamp']);
  });
  it('lets one middle wheel stand on both ramps: the gap is no wider than its tire less the margins', () => {
    const wheel = { name: 'rear wheel', gauge: inch(0), tireWidth: inch(24) };
    const alone = rightOf(rampSpacing([wheel], { ...ramps, closest: inch(20) }));
    // By hand: s <= 18 + 24 - 2; the gap then is 40 - 18 = 22 in, and the tire laps an inch onto each ramp.
    expect([show(alone.upper.at.value), show(alone.gap.most.value)]).toEqual(['40 in', '22 in']);
    const three = rightOf(rampSpacing([{ name: 'front axle', gauge: inch(54), tireWidth: inch(12) }, wheel], ramps));
    expect(three.notes.at(-1)?.says).toBe(
      'No setting serves: front axle asks for 50 in or wider, rear wheel for 40 in or closer.',
    );
  });
  it('refuses slots the wrong way round and no axles', () => {
    expect(
      leftOf(
        rampSpacing([{ name: 'front axle', gauge: inch(54), tireWidth: inch(12) }], { ...ramps, closest: inch(60) }),
      ).tag,
    ).toBe('OutsideItsRange');
    expect(leftOf(rampSpacing([], ramps)).tag).toBe('NothingGiven');
    const axle = { name: 'front axle', gauge: inch(54), tireWidth: inch(12) };
    expect(leftOf(rampSpacing([axle], { ...ramps, rampWidth: inch(0) }))).toMatchObject({ what: 'ramp width' });
    expect(leftOf(rampSpacing([axle], { ...ramps, closest: inch(-1) }))).toMatchObject({ what: 'closest setting' });
    expect(leftOf(rampSpacing([axle], { ...ramps, margin: inch(-1) }))).toMatchObject({
      what: 'margin beside the tire',
    });
    expect(leftOf(rampSpacing([{ ...axle, tireWidth: inch(0) }], ramps))).toMatchObject({
      what: 'front axle tire width',
    });
  });
});
