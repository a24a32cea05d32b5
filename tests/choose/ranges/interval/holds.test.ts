/** Interval arithmetic: whatever the inputs are inside their ranges, the result is inside the range of the result. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as interval from '../../../../src/choose/ranges/interval.js';

type Range = interval.Interval;
const radian = Math.PI / 180;
const value = fc.integer({ min: -40_000, max: 40_000 }).map((hundredths) => hundredths / 100);
/** A range, and a value in it at some share of the way. */
const held = fc
  .tuple(
    value,
    value,
    fc.integer({ min: 0, max: 64 }).map((part) => part / 64),
  )
  .map(([a, b, share]): { readonly range: Range; readonly inside: number } => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    return { range: { low, high }, inside: Math.min(high, Math.max(low, low + share * (high - low))) };
  });
const holds = ({ low, high }: Range, x: number): boolean => {
  const room = 1e-9 * Math.max(1, Math.abs(x));
  return Number.isNaN(x) || (x >= low - room && x <= high + room);
};

describe('of one range', () => {
  const inDegrees = (f: (angle: number) => number) => (x: number) => f(x * radian);
  it.each([
    ['squared', interval.squared, (x: number) => x * x],
    ['root', interval.root, Math.sqrt],
    ['sine', interval.sine, inDegrees(Math.sin)],
    ['cosine', interval.cosine, inDegrees(Math.cos)],
    ['tangent', interval.tangent, inDegrees(Math.tan)],
    ['arcSine', interval.arcSine, (x: number) => Math.asin(x) / radian],
    ['arcTangent', interval.arcTangent, (x: number) => Math.atan(x) / radian],
  ] as const)('%s holds every value', (_, ofRange, of) => {
    fc.assert(
      fc.property(held, ({ range, inside }) => holds(ofRange(range), of(inside))),
      { numRuns: 400 },
    );
  });
  it('is as narrow as the function where that goes one way', () => {
    expect(interval.squared({ low: 2, high: 3 })).toEqual({ low: 4, high: 9 });
    expect(interval.squared({ low: -2, high: 3 })).toEqual({ low: 0, high: 9 });
    expect(interval.cosine({ low: -90, high: 60 }).high).toBe(1);
    expect(interval.cosine({ low: 60, high: 90 }).high).toBeCloseTo(0.5, 12);
    expect(interval.sine({ low: -100, high: 0 })).toEqual({ low: -1, high: 1 });
  });
});

describe('of two ranges', () => {
  it.each([
    ['times', interval.times, (x: number, y: number) => x * y],
    ['over', interval.over, (x: number, y: number) => x / y],
  ] as const)('%s holds every value', (_, ofRanges, of) => {
    fc.assert(
      fc.property(held, held, (a, b) => b.inside === 0 || holds(ofRanges(a.range, b.range), of(a.inside, b.inside))),
      { numRuns: 400 },
    );
  });
  it('a divisor that may be zero leaves every result open', () => {
    const all = interval.over({ low: 1, high: 2 }, { low: -1, high: 1 });
    expect([holds(all, 1e12), holds(all, -1e12)]).toEqual([true, true]);
  });
  it('powers of bases that are not negative hold every value', () => {
    const small = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 9, noNaN: true }),
        small,
        (x, more, y) =>
          holds(interval.power({ low: x, high: x + more }, { low: y - 1, high: y + 1 }), (x + more / 2) ** y),
      ),
    );
  });
});
