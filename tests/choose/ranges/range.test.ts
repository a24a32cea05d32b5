/** The range of a formula against the formula itself at a fine grid of its inputs (arithmetic). */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../src/choose/ranges/flat.js';
import { forward } from '../../../src/choose/ranges/forward.js';
import type { Interval } from '../../../src/choose/ranges/interval.js';
import { rangeOf } from '../../../src/choose/ranges/range.js';
import {
  type Derived,
  difference,
  given,
  greatestOf,
  leastOf,
  minus,
  over,
  plus,
  result,
  root,
  times,
} from '../../../src/trace/index.js';
import { inch, lb, type Unit } from '../../../src/units/index.js';

const leaf = (name: string, pounds: number) => given(name, lb(pounds), 'stated', name);
const [x, y] = [leaf('x', 10), leaf('y', 4)];
const [a, b] = [given('a', inch(100), 'stated', 'a'), given('b', inch(20), 'stated', 'b')];
const names = ['x', 'y', 'a', 'b'];
const between: readonly Interval[] = [
  { low: 8, high: 13 },
  { low: 3, high: 6 },
  { low: 90, high: 120 },
  { low: 15, high: 40 },
];

function ranged(figure: Derived<Unit>, inputs = between) {
  const flat = flatten([figure.why], ({ path }) => (path === undefined ? undefined : names.indexOf(path)));
  const at = forward(flat, inputs, [...flat.nodes.keys()]);
  return rangeOf(flat, [[flat.indexOf.get(figure.why) as number, 1]], inputs, at);
}

/** The least and the most over a grid, with the ends in it. */
function onGrid(formula: (x: number, y: number, a: number, b: number) => number, inputs = between): Interval {
  const steps = inputs.map(({ low, high }) => Array.from({ length: 21 }, (_, i) => low + ((high - low) * i) / 20));
  const [xs, ys, as, bs] = steps as [number[], number[], number[], number[]];
  const all = xs.flatMap((p) => ys.flatMap((q) => as.flatMap((r) => bs.map((s) => formula(p, q, r, s)))));
  return { low: all.reduce((m, n) => Math.min(m, n)), high: all.reduce((m, n) => Math.max(m, n)) };
}

const moment = result('load', over(times(x, minus(a, b)), a));
const cases: readonly (readonly [string, Derived<Unit>, (x: number, y: number, a: number, b: number) => number])[] = [
  ['a difference', difference('d', x, y), (p, q) => p - q],
  ['the least of two', leastOf('least', [x, result('twice', times(2, y))]), (p, q) => Math.min(p, 2 * q)],
  ['the greatest of two', greatestOf('most', [x, result('twice', times(2, y))]), (p, q) => Math.max(p, 2 * q)],
  ['a sum of all', result('sum', plus(x, over(times(y, b), a))), (p, q, r, s) => p + (q * s) / r],
];

describe('an answer that goes one way with every input', () => {
  it.each(cases)('%s: its range is that of the grid, reached at its corners', (_, figure, formula) => {
    const found = ranged(figure);
    const { low, high } = onGrid(formula);
    expect(found.low).toBeCloseTo(low, 9);
    expect(found.high).toBeCloseTo(high, 9);
    expect(found.reached).toBe(true);
    const corner = (ends: ReadonlyMap<number, number>): number => {
      const [p, q, r, s] = between.map((one, i) => ends.get(i) ?? one.low) as [number, number, number, number];
      return formula(p, q, r, s);
    };
    expect(corner(found.lowest)).toBeCloseTo(low, 9);
    expect(corner(found.highest)).toBeCloseTo(high, 9);
  });
  it('an input that stands still has no corner', () => {
    const still = between.map((one, i) => (i === 1 ? { low: 4, high: 4 } : one));
    const found = ranged(difference('d', x, y), still);
    expect([found.low, found.high]).toEqual([4, 9]);
    expect([...found.lowest]).toEqual([[0, 8]]);
    expect([...found.highest]).toEqual([[0, 13]]);
  });
});

/** Twenty pounds, which no input moves. */
const whole = given('whole', lb(20), 'stated');
it.each([
  // The most, 5 lb at 10 lb, lies inside.
  ['x (20 - x) / 20', result('turning', times(x, over(minus(whole, x), whole))), (p: number) => (p * (20 - p)) / 20, 0],
  ['x (a - b) / a', moment, (p: number, _q: number, r: number, s: number) => (p * (r - s)) / r, 2],
] as const)(
  '%s may turn by its formula: it holds the true range, and says that its ends may not be reached',
  (_, figure, formula, turning) => {
    const found = ranged(figure);
    const { low, high } = onGrid(formula);
    expect(found.low).toBeLessThanOrEqual(low + 1e-12);
    expect(found.high).toBeGreaterThanOrEqual(high - 1e-12);
    expect(found.reached).toBe(false);
    expect([found.lowest.has(turning), found.highest.has(turning)]).toEqual([false, false]);
  },
);

it('an input that falls out of the answer does not widen it', () => {
  // (x a / (x b)): the load falls out.
  const figure = result('levers', over(times(x, a), times(x, b)));
  const found = ranged(figure);
  const { low, high } = onGrid((_p, _q, r, s) => r / s);
  expect(found.low).toBeCloseTo(low, 9);
  expect(found.high).toBeCloseTo(high, 9);
  expect(found.reached).toBe(true);
});

it('an input is taken to fall out only by what the formula does inside its range', () => {
  // root (x / 20 lb) times (20 lb - x) turns at 6.67 lb; below zero, where no root is, it would be flat.
  const figure = result('turning', times(root(over(x, whole)), minus(whole, x)));
  const wide = between.map((one, i) => (i === 0 ? { low: 0.1, high: 12 } : one));
  const found = ranged(figure, wide);
  const { low, high } = onGrid((p) => Math.sqrt(p / 20) * (20 - p), wide);
  expect(found.reached).toBe(false);
  expect(found.low).toBeLessThanOrEqual(low);
  expect(found.high).toBeGreaterThanOrEqual(high);
});

it('an input that turns an answer in a narrow place only does not fall out of it', () => {
  // x (20 - x) / 20 is 5 lb at 10 lb and above 4.995 lb within 0.32 lb of it: flat but there.
  const hill = result('hill', times(x, over(minus(whole, x), whole)));
  const figure = greatestOf('most', [given('floor', lb('4.995'), 'stated'), hill]);
  const found = ranged(figure);
  expect(found.reached).toBe(false);
  expect(found.high).toBeGreaterThanOrEqual(5);
});
