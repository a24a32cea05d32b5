/** What a step gives over ranges of its parts holds what it gives at every place in them, and no more where it goes one way. */
import { expect, it } from 'vitest';
import { stepOf } from '../../../src/choose/ranges/forward.js';
import { point } from '../../../src/choose/ranges/interval.js';
import { kinked, placesIn, smooth } from '../../helpers/steps.js';

const all = Object.entries({ ...smooth, ...kinked });

it.each(all)('%s holds every value, and at one place is that value', (_, { node, of, parts }) => {
  const { low, high } = stepOf(node, parts);
  for (const place of placesIn(parts)) {
    const value = of(...place);
    expect(value).toBeGreaterThanOrEqual(low - 1e-9);
    expect(value).toBeLessThanOrEqual(high + 1e-9);
    const there = stepOf(node, place.map(point));
    expect(there.low).toBeCloseTo(value, 9);
    expect(there.high).toBeCloseTo(value, 9);
  }
});

it.each(all.filter(([name]) => name !== 'a cosine'))('%s is no wider than its values', (_, { node, of, parts }) => {
  const values = placesIn(parts).map((place) => of(...place));
  const { low, high } = stepOf(node, parts);
  expect(low).toBeCloseTo(Math.min(...values), 9);
  expect(high).toBeCloseTo(Math.max(...values), 9);
});

it('rounding a figure that stands on a step, or on a half, by a hair of a double', () => {
  const rounds = (name: string, at: number) => stepOf((kinked[name] as (typeof kinked)[string]).node, [point(at)]);
  // 60 by steps of 20, off by what doubles lose: it is 60 all the same.
  expect(rounds('rounding down', 60 - 1e-10)).toEqual(point(60));
  expect(rounds('rounding up', 60 + 1e-10)).toEqual(point(60));
  expect(rounds('rounding down', 59.9)).toEqual(point(40));
  expect(rounds('rounding up', 60.1)).toEqual(point(80));
  // A half may go either way.
  expect(rounds('rounding to the nearest', 50)).toEqual({ low: 40, high: 60 });
  expect(rounds('rounding to the nearest', 51)).toEqual(point(60));
});
