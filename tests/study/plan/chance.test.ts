/** The random numbers of sampled designs: evenness, independence, normal quantiles, shuffling. */
import { describe, expect, it } from 'vitest';
import { normalQuantile, shuffledPlace, uniformAt } from '../../../src/study/plan/chance.js';

describe('chance', () => {
  it('spreads evenly: 100 bins of 200,000 draws, chi squared for 99 degrees of freedom', () => {
    for (const [seed, factor] of [
      [1, 0],
      [1, 1],
      [2, 0],
      [-5, 3],
    ] as const) {
      const bins = new Float64Array(100);
      for (let row = 0; row < 200_000; row += 1) {
        const i = Math.floor(uniformAt(seed, row, factor) * 100);
        bins[i] = (bins[i] as number) + 1;
      }
      const chiSquared = bins.reduce((total, count) => total + (count - 2000) ** 2 / 2000, 0);
      expect(chiSquared).toBeGreaterThan(49.2); // 0.00001 and 0.99999 points: about 49 and 172
      expect(chiSquared).toBeLessThan(172);
    }
  });
  it('does not follow from one row, factor or seed to the next', () => {
    const correlation = (a: (row: number) => number, b: (row: number) => number): number => {
      let total = 0;
      for (let row = 0; row < 100_000; row += 1) total += (a(row) - 0.5) * (b(row) - 0.5) * 12;
      return total / 100_000;
    };
    const first = (row: number): number => uniformAt(9, row, 0);
    for (const other of [
      (row: number) => uniformAt(9, row + 1, 0),
      (row: number) => uniformAt(9, row, 1),
      (row: number) => uniformAt(10, row, 0),
      (row: number) => uniformAt(9, row + 2 ** 33, 0),
    ]) {
      expect(Math.abs(correlation(first, other))).toBeLessThan(4.5 / Math.sqrt(100_000));
    }
  });
  it('has the normal quantiles that tables of statistics print', () => {
    const printed = [
      [0.5, 0],
      [0.75, 0.67449],
      [0.9, 1.281552],
      [0.95, 1.644854],
      [0.975, 1.959964],
      [0.99, 2.326348],
      [0.995, 2.575829],
      [0.999, 3.090232],
      [0.9999, 3.719016],
    ] as const;
    for (const [p, z] of printed) {
      expect(normalQuantile(p)).toBeCloseTo(z, 5);
      expect(normalQuantile(1 - p)).toBeCloseTo(-z, 5);
    }
    expect(Number.isFinite(normalQuantile(0)) && Number.isFinite(normalQuantile(1))).toBe(true);
  });
  it('shuffles: every place once, and not in order', () => {
    for (const count of [1, 2, 3, 5, 16, 17, 100, 1000, 4097]) {
      const places = Array.from({ length: count }, (_, row) => shuffledPlace(11, 2, row, count));
      expect([...places].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
      if (count >= 16) expect(places.filter((place, i) => place === i).length).toBeLessThan(count / 2);
    }
  });
  it('is the same in every version: who names a seed gets the rows that others got', () => {
    const rows = [0, 1, 12_345, 2 ** 31, 2 ** 32 + 7, 2 ** 40 + 5];
    expect(rows.map((row) => uniformAt(7, row, 3))).toEqual([
      0.22488368165342532, 0.308999981114217, 0.9792975962257365, 0.46673703387837484, 0.04045950440833457,
      0.5649875373672282,
    ]);
    expect([0, 1, 2].map((factor) => uniformAt(-1, 2, factor))).toEqual([
      0.9016352619227072, 0.8000967279891144, 0.1989527175554603,
    ]);
    expect(Array.from({ length: 20 }, (_, row) => shuffledPlace(7, 3, row, 20))).toEqual([
      12, 15, 10, 11, 9, 17, 18, 14, 0, 5, 7, 6, 1, 16, 2, 4, 13, 3, 8, 19,
    ]);
    expect([0, 1, 999_999].map((row) => shuffledPlace(2, 0, row, 1_000_000))).toEqual([176877, 853129, 814114]);
  });
});
