/** Where the machine must balance for a tongue share. */
import { describe, expect, it } from 'vitest';
import { balance, placeForTongueShare } from '../../../src/load/index.js';
import { compare, inch, lb, percent } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';
import { r1 } from '../reference-case.js';

describe('placeForTongueShare', () => {
  it('answers a place behind the axles when that is what the share needs', () => {
    const place = rightOf(
      placeForTongueShare(
        { ...r1, items: [{ name: 'trailer', weight: lb(3200), tongue: lb(1400) }] },
        lb(2000),
        percent(10),
      ),
    );
    expect(compare(place.at.value, inch(190))).toBe(1);
  });
  it('counts all that stays: a machine put there gives the share', () => {
    const items = [...r1.items, { name: 'box', weight: lb(300), at: inch(40) }];
    const place = rightOf(placeForTongueShare({ ...r1, items }, lb(9200), percent(12)));
    const loaded = rightOf(
      balance([...items, { name: 'machine', weight: lb(9200), at: place.at }], { axlesAt: inch(190) }),
    );
    expect(plain(loaded.tongue) / plain(loaded.gross)).toBeCloseTo(0.12, 12);
    expect(plain(place.tongue)).toBeCloseTo(0.12 * 12700, 9);
    expectReplays(place.at, place.tongue);
  });
  it('refuses a share above the whole', () => {
    expect(leftOf(placeForTongueShare(r1, lb(9200), percent(101))).tag).toBe('OutsideItsRange');
  });
});
