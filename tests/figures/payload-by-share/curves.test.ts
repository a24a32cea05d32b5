/** Which limit sets the payload at a share, and where that changes. */
import { expect, it } from 'vitest';
import { type Curve, crossings, leastAt, steps } from '../../../src/figures/payload-by-share/curves.js';

const line = (name: string, at: number, slope: number): Curve =>
  ({ name, payload: (share: number) => at + slope * share }) as Curve;

it('steps include both ends', () => expect(steps(1, 2, 4)).toEqual([1, 1.25, 1.5, 1.75, 2]));

it('the least of all curves sets the payload', () => {
  expect(leastAt([line('a', 10, 0), line('b', 0, 100)], 0.05)).toBe(5);
  expect(leastAt([line('a', 10, 0), line('b', 0, 100)], 0.2)).toBe(10);
});

it('limits change where their curves cross, once for each crossing', () => {
  const found = crossings([line('rising', 0, 100), line('flat', 10, 0), line('falling', 30, -100)], 0, 0.3);
  expect(found.map((share) => Number(share.toFixed(9)))).toEqual([0.1, 0.2]);
  expect(crossings([line('a', 0, 1)], 0, 1)).toEqual([]);
});

it('of two equal curves the first sets it, so that nothing changes between them', () => {
  expect(crossings([line('a', 1, 0), line('b', 1, 0)], 0, 1)).toEqual([]);
  // They run together up to a half, where the second falls below.
  const second = { name: 'b', payload: (share: number) => (share <= 0.5 ? 1 : 1.5 - share) } as Curve;
  expect(crossings([line('a', 1, 0), second], 0, 1).map((share) => share.toFixed(6))).toEqual(['0.500000']);
});
