/** How a step can move with each of its parts, against its slope between places close to each other (calculus). */
import { describe, expect, it } from 'vitest';
import { partialsOf } from '../../../src/choose/ranges/backward.js';
import { stepOf } from '../../../src/choose/ranges/forward.js';
import { endless, point } from '../../../src/choose/ranges/interval.js';
import { kinked, placesIn, smooth } from '../../helpers/steps.js';

const near = 1e-5;
const slopeOf = (of: (...parts: readonly number[]) => number, place: readonly number[], part: number): number => {
  const at = (by: number): number => of(...place.map((each, i) => (i === part ? each + by : each)));
  return (at(near) - at(-near)) / (2 * near);
};

it.each(Object.entries(smooth))('%s', (_, { node, of, parts }) => {
  const whole = partialsOf(node, parts, stepOf(node, parts));
  expect(whole).toHaveLength(parts.length);
  for (const place of placesIn(parts)) {
    const points = place.map(point);
    const there = partialsOf(node, points, stepOf(node, points));
    parts.forEach((_part, i) => {
      const slope = slopeOf(of, place, i);
      const off = 1e-6 * Math.max(1, Math.abs(slope));
      expect(whole[i]?.low).toBeLessThanOrEqual(slope + off);
      expect(whole[i]?.high).toBeGreaterThanOrEqual(slope - off);
      expect(Math.abs((there[i]?.low ?? Number.NaN) - slope)).toBeLessThan(off);
      expect(Math.abs((there[i]?.high ?? Number.NaN) - slope)).toBeLessThan(off);
    });
  }
});

describe('the least and the greatest', () => {
  const slopes = (name: string, ...parts: readonly (readonly [number, number])[]) => {
    const { node } = kinked[name] as (typeof kinked)[string];
    const ranges = parts.map(([low, high]) => ({ low, high }));
    return partialsOf(node, ranges, stepOf(node, ranges)).map(({ low, high }) => [low, high]);
  };
  const [none, upward, one] = [
    [0, 0],
    [0, 1],
    [1, 1],
  ];
  it('move with the part that is taken for sure, one for one, and with no other', () => {
    expect(slopes('a least', [1, 2], [3, 4], [5, 6])).toEqual([one, none, none]);
    expect(slopes('a greatest', [1, 2], [3, 4], [5, 6])).toEqual([none, none, one]);
  });
  it('move with every part that may be taken', () => {
    expect(slopes('a least', [1, 4], [3, 5], [5, 6])).toEqual([upward, upward, none]);
    expect(slopes('a greatest', [1, 2], [3, 6], [5, 7])).toEqual([none, upward, upward]);
    // The first is below the third, but not below the second for sure.
    expect(slopes('a least', [1, 4], [3, 9], [5, 6])).toEqual([upward, upward, none]);
    expect(slopes('a least', [1, 3], [3, 4], [5, 6])).toEqual([upward, upward, none]);
    expect(slopes('a greatest', [1, 2], [3, 5], [5, 7])).toEqual([none, upward, upward]);
  });
});

it('rounding goes up or stays', () => {
  for (const name of ['rounding down', 'rounding up', 'rounding to the nearest']) {
    const { node, parts } = kinked[name] as (typeof kinked)[string];
    expect(partialsOf(node, parts, stepOf(node, parts))).toEqual([{ low: 0, high: 1 }]);
  }
});

it('a root and a power of what may be zero are as steep as can be', () => {
  const fromZero = { low: 0, high: 4 };
  const root = smooth['a square root'] as (typeof smooth)[string];
  expect(partialsOf(root.node, [fromZero], stepOf(root.node, [fromZero]))).toEqual([{ low: 0, high: endless }]);
  const power = smooth['a power'] as (typeof smooth)[string];
  const parts = [fromZero, { low: 0.5, high: 0.5 }];
  const [, byExponent] = partialsOf(power.node, parts, stepOf(power.node, parts));
  expect(byExponent?.low).toBeLessThan(-1e9);
  expect(byExponent?.high).toBeCloseTo(2 * Math.log(4), 9);
});
