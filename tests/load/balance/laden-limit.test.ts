/** A limit is just kept by the weight, and at the share, that it is solved for: put back into its own definition, in doubles. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  grossAllowed,
  grossAllowedTogether,
  keptByTongue,
  type LadenLimit,
  shareAtLimit,
} from '../../../src/load/balance/laden-limit.js';
import { constant, type Derived, given } from '../../../src/trace/index.js';
import { lb, ratio } from '../../../src/units/index.js';
import { plain } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const pounds = fc.integer({ min: 1000, max: 20_000 });
/** Shares and bars in thousandths; nothing where none is stated. */
const part = (max: number) => fc.option(fc.integer({ min: 1, max }), { nil: undefined });
const asRatio = (thousandths: number | undefined) =>
  thousandths === undefined ? undefined : constant(ratio(`${thousandths / 1000}`));

/** What the limit says it limits: `W - T (1 - k) + q P` on the axles. */
function loadOn(limit: LadenLimit, gross: number, tongue: number, curb: number): number {
  const [k, q] = [limit.returned, limit.lean].map((each) => (each === undefined ? 0 : plain(each)));
  const payload = gross - curb;
  switch (limit.on) {
    case 'gross':
      return gross;
    case 'payload':
      return payload;
    case 'tongue':
      return tongue;
    case 'axles':
      return gross - tongue * (1 - (k ?? 0)) + (q ?? 0) * payload;
  }
}
const near = (one: number, other: number): void => expect(one / other).toBeCloseTo(1, 9);

describe('a limit on the laden trailer', () => {
  it('is just kept by the gross weight it allows at a share, and by that share at this weight', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('gross', 'axles', 'tongue', 'payload'),
        pounds,
        pounds,
        fc.integer({ min: 50, max: 300 }),
        part(500),
        part(400),
        (on, figure, empty, share, returned, lean) => {
          const limit: LadenLimit = {
            name: 'one',
            on,
            limit: given('limit', lb(figure), 'label'),
            ...(on === 'axles' && { returned: asRatio(returned), lean: asRatio(lean) }),
          };
          const [t, curb] = [constant(ratio(`${share / 1000}`)), given('curb', lb(empty), 'scale')];
          const gross: Derived<'lb'> = grossAllowed(limit, t, curb);
          near(loadOn(limit, plain(gross), (plain(gross) * share) / 1000, empty), figure);
          if (on === 'gross' || on === 'payload') return;
          const back = shareAtLimit(limit, gross, curb);
          expect(plain(back)).toBeCloseTo(share / 1000, 9);
          expectReplays(gross, back);
        },
      ),
      { numRuns: 200, seed: 7 },
    );
  });
  it('of the axles is just kept by what axles and tongue allow together', () => {
    fc.assert(
      fc.property(pounds, pounds, pounds, part(500), part(400), (figure, tongue, empty, returned, lean) => {
        const limit: LadenLimit = {
          name: 'axles',
          on: 'axles',
          limit: given('limit', lb(figure), 'label'),
          returned: asRatio(returned),
          lean: asRatio(lean),
        };
        const gross = grossAllowedTogether(
          limit,
          given('tongue', lb(tongue), 'label'),
          given('curb', lb(empty), 'scale'),
          'both',
        );
        near(loadOn(limit, plain(gross), tongue, empty), figure);
        expectReplays(gross);
      }),
      { numRuns: 100, seed: 8 },
    );
  });
  it('leaves the tongue all its load with the bars off, and what the bars do not return with them on', () => {
    const limit: LadenLimit = { name: 'axles', on: 'axles', limit: given('limit', lb(1), 'label') };
    expect(keptByTongue(limit)).toBe(1);
    const kept = keptByTongue({ ...limit, returned: constant(ratio('0.25')) });
    expect(kept !== 1 && plain(kept)).toBe(0.75);
  });
});
