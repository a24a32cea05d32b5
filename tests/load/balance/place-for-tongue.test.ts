/** Where the machine must balance for a tongue share. */
import { describe, expect, it } from 'vitest';
import { placeForTongueShare } from '../../../src/load/index.js';
import { compare, inch, lb, percent } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
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
  it('refuses a share above the whole', () => {
    expect(leftOf(placeForTongueShare(r1, lb(9200), percent(101))).tag).toBe('OutsideItsRange');
  });
});
