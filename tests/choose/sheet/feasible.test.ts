/** Whether linear relations can hold together, against figures that are found or ruled out by hand (algebra). */
import { expect, it } from 'vitest';
import { feasible } from '../../../src/choose/sheet/feasible.js';

const row = (factors: Readonly<Record<string, number>>, atMost: number) => ({
  factors: new Map(Object.entries(factors)),
  atMost,
});
const atLeast = (name: string, least: number) => row({ [name]: -1 }, -least);

it('of one unknown: between two ends, whatever they are multiplied by', () => {
  const between = (least: number, factor: number, most: number) =>
    feasible([atLeast('x', least), row({ x: factor }, most)]);
  expect([between(4, 2, 10), between(5, 2, 10), between(5.1, 2, 10)]).toEqual([true, true, false]);
  expect([between(4, 0.25, 1), between(4.1, 0.25, 1)]).toEqual([true, false]);
  expect(feasible([row({ x: -3 }, -12), row({ x: 1 }, 4)])).toBe(true);
  expect(feasible([row({ x: -3 }, -12), row({ x: 1 }, 3.9)])).toBe(false);
});

it('of several: 0.85 of a rating on two axles', () => {
  const axlesOf = (each: number) =>
    feasible([row({ gvwr: 0.85, a: -1, b: -1 }, 0), atLeast('gvwr', 14000), row({ a: 1 }, each), row({ b: 1 }, each)]);
  // 0.85 x 14,000 lb are 11,900 lb: 5,950 lb each.
  expect([axlesOf(5950), axlesOf(5949), axlesOf(7000)]).toEqual([true, false, true]);
});

it('of sums that must be equal, and chains of them', () => {
  const equal = (factors: Readonly<Record<string, number>>) => [
    row(factors, 0),
    row(Object.fromEntries(Object.entries(factors).map(([name, factor]) => [name, -factor])), 0),
  ];
  const is = (name: string, at: number) => [row({ [name]: 1 }, at), atLeast(name, at)];
  const tires = (all: number) =>
    feasible([...equal({ all: 1, each: -4 }), ...equal({ axle: 1, each: -2 }), ...is('all', all), ...is('axle', 7000)]);
  expect([tires(14000), tires(14001), tires(13000)]).toEqual([true, false, false]);
});

it('of nothing, and of rows that no figure is in', () => {
  expect(feasible([])).toBe(true);
  expect([feasible([row({}, 0)]), feasible([row({}, 5)]), feasible([row({}, -1)])]).toEqual([true, true, false]);
  expect(feasible([row({ x: 1 }, -5)])).toBe(true);
  expect(feasible([row({ x: 1 }, -5), atLeast('x', 0)])).toBe(false);
});
