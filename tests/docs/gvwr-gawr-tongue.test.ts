/** The guide page prints figures; these lines are run. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { agencyLetters, coupledAxleLoad, gvwrLowerBound, largestRatedCargo } from '../../src/rules/index.js';
import { lb, percent, show } from '../../src/units/index.js';
import { orFail } from '../rules/helpers.js';

const page = readFileSync(join(import.meta.dirname, '../../docs/guide/gvwr-gawr-tongue.md'), 'utf8');

describe('docs/guide/gvwr-gawr-tongue.md', () => {
  it('prints what the library answers', () => {
    expect(show(orFail(largestRatedCargo({ gvwr: lb(14000), unloaded: lb(3200), seats: 0 })).value)).toBe('10,800 lb');
    const [even, thin] = [
      orFail(coupledAxleLoad({ gvwr: lb(14000), tongueShare: percent(12), sumOfGawrs: lb(14000) })),
      orFail(coupledAxleLoad({ gvwr: lb(15400), tongueShare: percent(9), sumOfGawrs: lb(14000) })),
    ];
    expect([show(even.tongue.value), show(even.axleLoad.value), even.check.verdict]).toEqual([
      '1,680 lb',
      '12,320 lb',
      'within',
    ]);
    expect([show(thin.axleLoad.value), thin.check.verdict]).toEqual(['14,014 lb', 'over']);
    expect(show(orFail(gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 0 })).value)).toBe('7,000 lb');
    for (const figure of ['10,800 lb', '1,680 lb', '12,320 lb', '14,014 lb', '7,000 lb'])
      expect(page).toContain(figure);
  });
  it('shows every letter that speaks of GVWR, GAWR or their sum', () => {
    for (const { id, dated, topic } of agencyLetters.rows)
      if (topic !== 'label') expect(page).toContain(`| ${id} | ${dated} |`);
  });
});
