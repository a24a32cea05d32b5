/** Height of the tail where the ground rises or falls behind the last axle. */
import { describe, expect, it } from 'vitest';
import { tailHeight } from '../../../src/load/index.js';
import { degree, inch } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('the height of the tail', () => {
  it('is less by the rise of the ground, 81 in x tan 5 degrees, and more where the ground falls', () => {
    const [up, down, level] = [5, -5, 0].map((slope) => rightOf(tailHeight(inch(16), inch(81), degree(slope))));
    const rise = 81 * Math.tan((5 * Math.PI) / 180);
    expect([up, down, level].map((each) => plain(each!))).toEqual([
      expect.closeTo(16 - rise, 9),
      expect.closeTo(16 + rise, 9),
      16,
    ]);
    expectReplays(up!, down!, level!);
  });
  it('is that of the level right at the axle, and asked up to 45 degrees', () => {
    expect(plain(rightOf(tailHeight(inch(16), inch(0), degree(20))))).toBe(16);
    expect(plain(rightOf(tailHeight(inch(16), inch(10), degree(45))))).toBeCloseTo(6, 9);
    expect(leftOf(tailHeight(inch(16), inch(10), degree(46)))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(tailHeight(inch(16), inch(10), degree(-46)))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(plain(rightOf(tailHeight(inch(16), inch(10), degree(-45))))).toBeCloseTo(26, 9);
    expect(leftOf(tailHeight(inch(16), inch(-1), degree(5)))).toMatchObject({ what: 'the tail behind the last axle' });
    expect(leftOf(tailHeight(inch(0), inch(81), degree(5)))).toMatchObject({ tag: 'OutsideItsRange' });
  });
});
