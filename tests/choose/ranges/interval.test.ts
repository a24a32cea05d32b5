/** Each step over intervals holds what the step gives at every point, and its ends are given at some point (arithmetic and trigonometry). */
import { describe, expect, it } from 'vitest';
import {
  arcSine,
  arcTangent,
  cosine,
  endless,
  everything,
  type Interval,
  minus,
  negated,
  over,
  plus,
  point,
  power,
  root,
  sine,
  squared,
  tangent,
  times,
} from '../../../src/choose/ranges/interval.js';

const between = (low: number, high: number): Interval => ({ low, high });
const pointsIn = ({ low, high }: Interval): readonly number[] => [
  ...Array.from({ length: 41 }, (_, i) => low + ((high - low) * i) / 40),
  ...(low < 0 && high > 0 ? [0] : []),
];
const degrees = (at: number): number => (at * Math.PI) / 180;

function expectHull(found: Interval, values: readonly number[]): void {
  expect(found.low).toBeCloseTo(Math.min(...values), 9);
  expect(found.high).toBeCloseTo(Math.max(...values), 9);
}

const some = [between(-3, -1), between(-2, 5), between(0, 4), between(1, 1), between(2, 7), between(-4, 0)];

describe('of two intervals', () => {
  const pairs = some.flatMap((a) => some.map((b) => [a, b] as const));
  const all = (a: Interval, b: Interval, step: (x: number, y: number) => number): readonly number[] =>
    pointsIn(a).flatMap((x) => pointsIn(b).map((y) => step(x, y)));
  it.each(pairs)('%o and %o', (a, b) => {
    expectHull(
      plus(a, b),
      all(a, b, (x, y) => x + y),
    );
    expectHull(
      minus(a, b),
      all(a, b, (x, y) => x - y),
    );
    expectHull(
      times(a, b),
      all(a, b, (x, y) => x * y),
    );
    if (b.low > 0 || b.high < 0)
      expectHull(
        over(a, b),
        all(a, b, (x, y) => x / y),
      );
    else expect(over(a, b)).toEqual(everything);
    if (a.low >= 0)
      expectHull(
        power(a, point(2)),
        all(a, point(2), (x) => x ** 2),
      );
  });
  it('a power of what may be below zero counts from zero on', () => {
    expect(power(between(-4, 3), point(2))).toEqual(between(0, 9));
    expect(power(between(2, 3), between(-1, 2))).toEqual(between(1 / 3, 9));
  });
  it('no end is beyond the endless', () => {
    expect(times(everything, everything)).toEqual(between(-endless, endless));
    expect(over(everything, point(1e-200))).toEqual(everything);
  });
});

describe('of one interval', () => {
  it.each(some)('%o', (a) => {
    expectHull(
      squared(a),
      pointsIn(a).map((x) => x * x),
    );
    expectHull(
      negated(a),
      pointsIn(a).map((x) => -x),
    );
    expectHull(
      root(a),
      pointsIn(a).map((x) => Math.sqrt(Math.max(0, x))),
    );
    expectHull(
      arcTangent(a),
      pointsIn(a).map((x) => (Math.atan(x) * 180) / Math.PI),
    );
  });
  it.each([
    [between(-180, 180), -1, 1],
    [between(-90, 90), 0, 1],
    [between(0, 180), -1, 1],
    [between(-180, 0), -1, 1],
    [between(30, 60), 0.5, Math.cos(degrees(30))],
    [between(-60, 10), 0.5, 1],
    [between(100, 180.5), -1, 1], // beyond half a turn nothing is told
    [between(-180.5, -100), -1, 1],
  ])('the cosine of %o', (a, low, high) => {
    expect(cosine(a).low).toBeCloseTo(low, 9);
    expect(cosine(a).high).toBeCloseTo(high, 9);
  });
  it.each([
    [between(-90, 90), -1, 1],
    [between(30, 90), 0.5, 1],
    [between(-90, -30), -1, -0.5],
    [between(80, 90.5), -1, 1],
    [between(-90.5, -80), -1, 1],
  ])('the sine of %o', (a, low, high) => {
    expect(sine(a).low).toBeCloseTo(low, 9);
    expect(sine(a).high).toBeCloseTo(high, 9);
  });
  it('the tangent, short of a quarter turn', () => {
    expectHull(tangent(between(-45, 60)), [-1, Math.sqrt(3)]);
    for (const a of [between(-90, 0), between(0, 90), between(-91, 91)]) expect(tangent(a)).toEqual(everything);
  });
  it('the arc sine, of a share at most one', () => {
    expectHull(arcSine(between(-0.5, 1)), [-30, 90]);
    expectHull(arcSine(between(-1.2, 1.2)), [-90, 90]);
    expectHull(arcSine(between(-1, 0.5)), [-90, 30]);
  });
});
