/** What programs call a check: the part, what limits it, the way of standing. */
import { describe, expect, it } from 'vitest';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import { lb } from '../../src/units/index.js';

const idOf = (part: string | undefined, how?: string): string =>
  checkLoad(rating('GAWR', lb(5200), part === undefined ? {} : { part }), weight('axle load', lb(5000)), how).id;

describe('the id of a check', () => {
  it('is its part, its limit and its way of standing, in small letters and hyphens', () => {
    const bare = idOf(undefined);
    expect(bare).toMatch(/^[a-z-]+(\/[a-z-]+)*$/);
    const limit = idOf('axle 1').replace('axle-1/', '');
    expect([idOf('axle 1'), idOf('axle 2'), idOf('axle 1 heavier side')]).toEqual([
      `axle-1/${limit}`,
      `axle-2/${limit}`,
      `axle-1/heavier-side/${limit}`,
    ]);
    expect(idOf('axle 12', 'bars on, off level')).toBe(`axle-12/${limit}@bars-on+off-level`);
    expect(idOf('Front (left)')).toBe(`front-left/${limit}`);
  });
});
