/** Demands that go straight over a deck, told from others, and where a row of pieces meets them (arithmetic of lines). */
import { expect, it } from 'vitest';
import { onLine, straightened, stretchOnLines } from '../../../src/choose/stock/straight.js';

type Demands = Parameters<typeof straightened>[0];
const job = { front: 60, rear: 300, lengths: [80, 40] } as Parameters<typeof straightened>[1];
const demands = (all: readonly ((fronts: readonly number[]) => number)[]): Demands =>
  ({ count: all.length, at: (i: number, fronts: readonly number[]) => all[i]?.(fronts) ?? 0 }) as never;
const sum = ([p = 0, q = 0]: readonly number[]): number => 500 + 2 * (p - 60) - 3 * (q - 60);

it('tells straight demands, with what each inch adds, from those that bend', () => {
  const { lines, others } = straightened(
    demands([sum, (at) => sum(at) + Math.abs((at[0] ?? 0) - 150), ([p = 0]) => p * p, () => 7]),
    job,
  );
  expect(others).toEqual([1, 2]);
  expect(lines.map(({ demand }) => demand)).toEqual([0, 3]);
  expect(lines[0]?.start).toBe(500);
  expect(lines[0]?.perInch[0]).toBeCloseTo(2, 9);
  expect(lines[0]?.perInch[1]).toBeCloseTo(-3, 9);
  expect(onLine(lines[0] as (typeof lines)[0], [100, 200], 60)).toBeCloseTo(sum([100, 200]), 9);
});

it('a line that is missed by half of what a tie may miss zero by is straight, by more it bends', () => {
  // A step at inch 61: at the middle of the deck it is whole where the line foresees half of it.
  const stepped = (by: number) =>
    straightened(demands([([p = 0]) => (p > 61 ? by : 0)]), { ...job, lengths: [80] } as never).lines.length;
  expect([0.9e-7, 1.1e-7, 1e-3].map(stepped)).toEqual([1, 0, 0]);
});

it.each([
  [100, 4, [0, 40]],
  [-100, 4, [25, 40]],
  [-101, 4, [26, 40]],
  [100, -4, [0, 25]],
  [101, -4, [0, 25]],
  [-1, -4, undefined],
  [-1, 0, undefined],
  [0, 0, [0, 40]],
  [-400, 4, undefined],
] as const)('a demand of %i that gains %i an inch: the steps %j', (start, slope, steps) => {
  const line = { demand: 0, start, perInch: [slope / 4, (3 * slope) / 4] } as never;
  const row = { fronts: [60, 60], room: 40 } as never;
  const found = stretchOnLines([line], row, 60, () => false);
  expect(found).toEqual(steps);
  expect(stretchOnLines([line], row, 60, () => true)).toEqual([0, 40]);
});
