/** What the left and the right wheels carry, and how far the load is off the middle. */
import { describe, expect, it } from 'vitest';
import { lateralCentre, wheelShares } from '../../../src/load/index.js';
import { inch, lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('side to side', () => {
  it('4 in off an 80 in track: 55 % on that side', () => {
    const shares = rightOf(wheelShares(lb(6000), inch(4), inch(80)));
    expect([show(shares.left.value), show(shares.right.value), show(shares.rightShare.value)]).toEqual([
      '2,700 lb',
      '3,300 lb',
      '0.55',
    ]);
    expectReplays(shares.left, shares.right, shares.rightShare);
  });
  it('says when a side lifts', () => {
    expect(rightOf(wheelShares(lb(6000), inch(-41), inch(80))).notes[0]?.tag).toBe('SideLifts');
    // Right over the wheels of one side the other carries nothing, and stays on the ground.
    for (const side of [-40, 40]) expect(rightOf(wheelShares(lb(6000), inch(side), inch(80))).notes).toEqual([]);
    expect(
      rightOf(wheelShares(lb(6000), inch('40.001'), inch(80))).notes.map(({ figures }) => figures?.length),
    ).toEqual([1]);
  });
  it('finds the lateral centre', () => {
    const centre = rightOf(
      lateralCentre([
        { name: 'trailer', weight: lb(3000), rightOfMiddle: inch(0) },
        { name: 'bucket', weight: lb(1000), rightOfMiddle: inch(20) },
      ]),
    );
    expect(show(centre.rightOfMiddle.value)).toBe('5 in');
    expectReplays(centre.rightOfMiddle, centre.weight);
  });
  it('refuses no track, no items, no weight', () => {
    expect(leftOf(wheelShares(lb(6000), inch(4), inch(0))).tag).toBe('OutsideItsRange');
    expect(leftOf(lateralCentre([])).tag).toBe('NothingGiven');
    expect(leftOf(lateralCentre([{ name: 'air', weight: lb(0), rightOfMiddle: inch(0) }])).tag).toBe('OutsideItsRange');
  });
});
