/** A polygon with rounded corners: arcs that touch both sides, by plane geometry. */
import { describe, expect, it } from 'vitest';
import { roundedPath } from '../../../src/figures/sections/rounded-path.js';

const square = (radius: number) => [
  { x: 0, y: 0, radius },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

describe('a corner', () => {
  it('without a radius is sharp', () => {
    expect(roundedPath(square(0))).toBe('M0 0L10 0L10 10L0 10Z');
    expect(roundedPath(square(-1))).toBe('M0 0L10 0L10 10L0 10Z');
  });
  it('of a right angle is left and met a radius from its point, however small', () => {
    expect(roundedPath(square(2))).toBe('M0 2A2 2 0 0 1 2 0L10 0L10 10L0 10Z');
    expect(roundedPath(square(0.5))).toBe('M0 0.5A0.5 0.5 0 0 1 0.5 0L10 0L10 10L0 10Z');
  });
  it('never takes more than half of a side', () =>
    expect(roundedPath(square(8))).toBe('M0 5A8 8 0 0 1 5 0L10 0L10 10L0 10Z'));
  it('turns the other way where the polygon runs the other way', () =>
    expect(roundedPath([...square(2)].reverse())).toBe('M0 10L10 10L10 0L2 0A2 2 0 0 0 0 2Z'));
  it('of sixty degrees is met at the radius over the tangent of thirty', () => {
    const height = 10 * Math.sqrt(3);
    const path = roundedPath([
      { x: 0, y: 0, radius: 2 },
      { x: 20, y: 0 },
      { x: 10, y: height },
    ]);
    // 2 / tan 30 = 3.464; along the slope (1.732, 3).
    expect(path).toBe(`M1.7 3A2 2 0 0 1 3.5 0L20 0L10 ${height.toFixed(1)}Z`);
  });
  it('at which two points fall together has no side to go along', () => {
    const path = roundedPath([
      { x: 0, y: 0, radius: 2 },
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ]);
    expect(path).not.toMatch(/NaN|Infinity/);
  });
});
