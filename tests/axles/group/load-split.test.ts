/** How axles share a load: rockers alike, springs by their rates and the attitude. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tandemSplit } from '../../../src/axles/index.js';
import { inch, kg, lb, quantity, showBrief } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const rate = (digits: number) => quantity(digits, 'lb/in');
const shown = (loads: readonly { value: Parameters<typeof showBrief>[0] }[]): string[] =>
  loads.map(({ value }) => showBrief(value));

describe('tandemSplit', () => {
  it('equalised axles carry alike', () => {
    const split = rightOf(tandemSplit(lb(11000), { suspension: 'equalised', axles: 2 }));
    expect(shown(split.loads)).toEqual(['5,500 lb', '5,500 lb']);
    expectReplays(...split.loads);
    expect(shown(rightOf(tandemSplit(kg(4500), { suspension: 'equalised', axles: 3 })).loads)).toEqual([
      '3,306.93 lb',
      '3,306.93 lb',
      '3,306.93 lb',
    ]);
  });
  it('unequal rocker arms load the axle with the shorter arm', () => {
    const split = rightOf(
      tandemSplit(lb(10000), { suspension: 'unequal rockers', frontArm: inch(8), rearArm: inch(12) }),
    );
    expect(shown(split.loads)).toEqual(['6,000 lb', '4,000 lb']);
    expectReplays(...split.loads);
  });
  const sprung = (rise: number) =>
    ({
      suspension: 'independent',
      axles: [
        { at: inch(172), rate: rate(1000) },
        { at: inch(208), rate: rate(1000) },
      ],
      ballAboveLevel: inch(rise),
    }) as const;
  it('independent axles, ball 2 in low: the front axle takes load, by about k dh s / (2 a)', () => {
    const split = rightOf(tandemSplit(lb(11000), sprung(-2)));
    // a1 172, a2 208: dR1 = 2,000 [1 - 172 x 380/72,848] = 205.58; dR2 = 2,000 [1 - 208 x 380/72,848] = -170.00
    expect(shown(split.loads)).toEqual(['5,705.58 lb', '5,330 lb']);
    expect(showBrief(split.tongueChange?.value ?? lb(0))).toBe('-35.58 lb');
    expect(Math.abs(205.58 - (1000 * 2 * 36) / (2 * 190))).toBeLessThan(20);
    expectReplays(...split.loads, ...(split.tongueChange === undefined ? [] : [split.tongueChange]));
  });
  it('ball high loads the rear axle and adds to the tongue', () => {
    const split = rightOf(tandemSplit(lb(11000), sprung(2)));
    expect(shown(split.loads)).toEqual(['5,294.42 lb', '5,670 lb']);
    expect(showBrief(split.tongueChange?.value ?? lb(0))).toBe('35.58 lb');
  });
  it('says so when an axle leaves the ground', () => {
    expect(rightOf(tandemSplit(lb(400), sprung(3))).notes.map(({ tag }) => tag)).toEqual(['AxleOffTheGround']);
  });
  it('moments about the ball balance and no load is lost, with any springs', () => {
    const axle = fc.record({ at: fc.integer({ min: 100, max: 300 }), k: fc.integer({ min: 200, max: 3000 }) });
    fc.assert(
      fc.property(fc.array(axle, { minLength: 1, maxLength: 4 }), fc.integer({ min: -6, max: 6 }), (axles, rise) => {
        const of = (dh: number) =>
          rightOf(
            tandemSplit(lb(12000), {
              suspension: 'independent',
              axles: axles.map(({ at, k }) => ({ at: inch(at), rate: rate(k) })),
              ballAboveLevel: inch(dh),
            }),
          );
        const [level, raised] = [of(0), of(rise)];
        const change = raised.loads.map(({ value }, i) =>
          value.value.minus(level.loads[i]?.value.value ?? 0).toNumber(),
        );
        expect(change.reduce((total, d, i) => total + d * (axles[i]?.at ?? 0), 0)).toBeCloseTo(0, 6);
        expect(
          change.reduce((total, d) => total + d, 0) + (raised.tongueChange?.value.value.toNumber() ?? 0),
        ).toBeCloseTo(0, 9);
      }),
    );
  });
  it('cannot say for three independent axles without rates', () => {
    expect(leftOf(tandemSplit(lb(11000), { suspension: 'independent, level', axles: 3 }))).toEqual({
      chapter: 'axles',
      tag: 'SharingUnknown',
      axles: 3,
    });
    expect(rightOf(tandemSplit(lb(11000), { suspension: 'independent, level', axles: 2 })).notes[0]?.tag).toBe(
      'LevelAssumed',
    );
  });
  it('refuses no axles, half an axle and a spring of no rate', () => {
    for (const axles of [0, 1.5, 21, 1e9])
      expect(leftOf(tandemSplit(lb(11000), { suspension: 'equalised', axles })).tag).toBe('NotAWholeCount');
    expect(leftOf(tandemSplit(lb(1), { suspension: 'independent', axles: [], ballAboveLevel: inch(0) })).tag).toBe(
      'NoAxles',
    );
    expect(
      leftOf(
        tandemSplit(lb(1), {
          suspension: 'independent',
          axles: [{ at: inch(180), rate: rate(0) }],
          ballAboveLevel: inch(0),
        }),
      ).tag,
    ).toBe('OutsideItsRange');
    expect(leftOf(tandemSplit(lb(1), { suspension: 'unequal rockers', frontArm: inch(0), rearArm: inch(8) })).tag).toBe(
      'OutsideItsRange',
    );
  });
});
