/** Round-number designs: no verdict and no governing check differs from fractions of whole numbers, nor from `assess`. `npm run study:proof` does the same at length. */
import { describe, expect, it } from 'vitest';
import { againstAssess, againstFractions, type Compared, nothingCompared, together } from './against.js';
import { judged } from './fractions.js';
import { plainDesign, wholeDesign } from './round-designs.js';

const over = (count: number, one: (n: number) => Compared): Compared =>
  Array.from({ length: count }, (_, n) => one(n)).reduce(together, nothingCompared);

describe('the fractions themselves', () => {
  it('say what one finds by hand', () => {
    // 10,000 lb gross, axles at 200 in carry (2700 x 200 + 7000 x 180) / 200 = 9,000 lb: the tongue is 1,000 lb, a tenth exactly.
    const axle = { gawr: 4500n, tire: 2250n };
    const trailer = {
      gvwr: 10_000n,
      curb: 3000n,
      curbTongue: 300n,
      couplerGross: 20_000n,
      couplerTongue: 1000n,
      axles: [
        { at: 180n, ...axle },
        { at: 220n, ...axle },
      ],
      weight: 7000n,
      at: 180n,
    };
    const every =
      'gross against GVWR = axle load against axle 1 GAWR = axle load against axle 2 GAWR = tire load against axle 1 tire = tire load against axle 2 tire = tongue against coupler tongue';
    expect(judged(trailer)).toEqual({ over: false, governs: every, tongueOutside: false });
    expect(judged({ ...trailer, gvwr: 9999n })).toMatchObject({ over: true, governs: 'gross against GVWR' });
    expect(judged({ ...trailer, at: 181n }).tongueOutside).toBe(true);
  });
});

describe('studies of round numbers', () => {
  it('are those of the fractions, over the plain trailer', () => {
    const { rows, answered, tied, exact, wrong } = over(6, (n) => againstFractions(plainDesign(1, n)));
    expect(wrong).toEqual([]);
    expect(rows).toBeGreaterThan(20_000);
    expect(answered).toBeGreaterThan(rows / 4);
    expect(tied).toBeGreaterThan(1000);
    expect(exact).toBeGreaterThan(1000);
  });
  it('are those of assess, over the plain trailer', () => {
    const { rows, wrong } = over(3, (n) => againstAssess(plainDesign(2, n, 3, 6), 3));
    expect(wrong).toEqual([]);
    expect(rows).toBeGreaterThan(150);
  });
  it('are those of assess, over the whole example', () => {
    const { rows, wrong } = over(2, (n) => againstAssess(wholeDesign(3, n, 3, 4), 2));
    expect(wrong).toEqual([]);
    expect(rows).toBeGreaterThan(50);
  });
});
