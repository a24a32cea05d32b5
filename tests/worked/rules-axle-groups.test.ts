/** Published figures of the axle-group formula. Sources beside the checks. */
import { describe, expect, it } from 'vitest';
import { axleGroupLimit } from '../../src/rules/index.js';
import { foot, show, showBrief } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { orFail } from '../rules/helpers.js';

describe('axle-group formula', () => {
  it.each([
    ['State weight-law examples (Wisconsin), copy', 10, 2, '40,000 lb', '40,000 lb'],
    ['agency pamphlet figure as quoted elsewhere', 36, 4, '66,000 lb', '66,000 lb'],
    ['67 Pa. Code 185.3', 8, 3, '42,000 lb', '42,000 lb'],
    ['67 Pa. Code 185.3', 13, 4, '50,666.67 lb', '50,500 lb'],
    ['the formula, derived', 51, 5, '79,875 lb', '80,000 lb'],
    ['the formula, derived', 48, 5, '78,000 lb', '78,000 lb'],
    ['67 Pa. Code 185.3', 20, 3, '51,000 lb', '51,000 lb'],
  ])('%s: %i ft, %i axles', (_, length, count, exact, limit) => {
    for (const tie of ['up', 'down'] as const) {
      const found = orFail(
        axleGroupLimit({ count, length: foot(length), twoTandems: false }, { tie, lengthRounding: 'none' }),
      );
      expect(found.exact && showBrief(found.exact.value)).toBe(exact);
      expect(found.byFormula && show(found.byFormula.value)).toBe(limit);
      expectReplays(found.limit);
    }
  });
  it('two tandems, 36 ft: 68,000 lb (23 USC 127(a); the Pennsylvania table prints it from 36 to 38 ft)', () => {
    const found = orFail(
      axleGroupLimit({ count: 4, length: foot(36), twoTandems: true }, { tie: 'down', lengthRounding: 'none' }),
    );
    expect([found.kind, show(found.limit.value)]).toEqual(['two tandems', '68,000 lb']);
    expectReplays(found.limit);
  });
});
