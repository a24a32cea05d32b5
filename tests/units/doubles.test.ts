/** The bound of a double: zero where the result is exact, and never less than the plain worst case. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundOfArcSine,
  boundOfArcTangent,
  boundOfDigits,
  boundOfProduct,
  boundOfQuotient,
  boundOfRoot,
  boundOfSum,
  boundOfTangent,
  boundOfTotal,
  nearestDouble,
} from '../../src/units/doubles.js';
import { Decimal } from '../../src/units/internal.js';

describe('the double of a decimal', () => {
  it('is the nearest one, of any size and any number of digits', () => {
    const text = fc
      .tuple(fc.bigInt({ min: -(10n ** 24n), max: 10n ** 24n }), fc.integer({ min: -40, max: 40 }))
      .map(([digits, power]) => `${digits}e${power}`);
    fc.assert(
      fc.property(text, (each) => {
        expect(nearestDouble(new Decimal(each))).toBe(Number(each) + 0);
      }),
      { numRuns: 500, seed: 4 },
    );
    for (let power = -45; power <= 45; power += 1)
      for (const each of [`1e${power}`, `-12345678e${power}`, `12345678901234e${power}`, `123456789012345e${power}`])
        expect(nearestDouble(new Decimal(each))).toBe(Number(each));
    expect(nearestDouble(new Decimal(0))).toBe(0);
  });
});

describe('a bound is nothing', () => {
  it('for sums, products and quotients that are exact in doubles', () => {
    expect(boundOfSum(0.5, 0, 0.25, 0, 0.75)).toBe(0);
    expect(boundOfProduct(1.5, 0, 2, 0, 3)).toBe(0);
    expect(boundOfQuotient(3, 0, 2, 0, 1.5)).toBe(0);
    expect(boundOfTotal(0, 5)).toBe(0);
  });
  it('for nothing times anything, as long as the nothing is exact', () => {
    expect(boundOfProduct(0, 0, 5, 0.1, 0)).toBe(0);
    expect(boundOfProduct(5, 0.1, 0, 0, 0)).toBe(0);
  });
});

describe('a bound is not nothing', () => {
  it('for nothing that is only nearly so, times one or more', () => {
    expect(boundOfProduct(1, 0, 0, 0.1, 0)).toBeGreaterThanOrEqual(0.1);
    expect(boundOfProduct(0, 0.1, 1, 0, 0)).toBeGreaterThanOrEqual(0.1);
    expect(boundOfProduct(0, 1, 3, 0, 0)).toBeGreaterThanOrEqual(3);
    expect(boundOfProduct(3, 0, 0, 1, 0)).toBeGreaterThanOrEqual(3);
    expect(boundOfProduct(0, 1, 0, 1, 0)).toBeGreaterThanOrEqual(1);
  });
  it('for a product of exact figures that a double does not hold', () => {
    const [a, b] = [2 ** 40 + 2 ** -10, 4095];
    // 2^40 + 2^-10 times 4,095 has digits from 2^52 down to 2^-10: ten more than a double.
    expect(boundOfProduct(a, 0, b, 0, a * b)).toBeGreaterThan(0);
    expect(boundOfProduct(b, 0, a, 0, b * a)).toBeGreaterThan(0);
    expect(boundOfProduct(2 ** 40, 0, b, 0, 2 ** 40 * b)).toBe(0);
    // 3 times 3,002,399,751,580,331 is 2^53 + 1, which a double rounds to 2^53.
    expect(boundOfProduct(3, 0, 3_002_399_751_580_331, 0, 2 ** 53)).toBeGreaterThanOrEqual(1);
    expect(boundOfProduct(2 ** 26, 0, 2 ** 26, 0, 2 ** 52)).toBe(0);
  });
  it('for a sum of figures that are uncertain by halves', () => {
    expect(boundOfSum(0.5, 0.5, 0.25, 0.5, 0.75)).toBeGreaterThanOrEqual(1);
    expect(boundOfSum(0.5, 1, 0.25, 0, 0.75)).toBeGreaterThanOrEqual(1);
  });
  it('for a third, and for a sum that loses digits', () => {
    expect(boundOfQuotient(1, 0, 3, 0, 1 / 3)).toBeGreaterThan(0);
    expect(boundOfSum(1e15, 0, 0.3, 0, 1e15 + 0.3)).toBeGreaterThan(0);
    expect(boundOfTotal(1e-12, 5)).toBeGreaterThan(1e-12);
  });
  it('where the divisor may be nothing: it is without end', () => {
    expect(boundOfQuotient(1, 0, 0, 0, Infinity)).toBe(Infinity);
    expect(boundOfQuotient(1, 0, 2, 2, 0.5)).toBe(Infinity);
    expect(boundOfQuotient(1, 0, 2, 1.9, 0.5)).toBeLessThan(Infinity);
  });
});

describe('the bound of a root or an angle', () => {
  it('is nothing for an exact root of an exact figure, and only there', () => {
    expect([boundOfRoot(4, 0, 2), boundOfRoot(12.25, 0, 3.5)]).toEqual([0, 0]);
    expect(boundOfRoot(2, 0, Math.SQRT2)).toBeGreaterThan(0);
    // The root of 4.1 is 0.0248 above that of 4, of 3.9 as much below.
    expect(boundOfRoot(4, 0.1, 2)).toBeGreaterThan(0.0248);
    expect(boundOfRoot(4, 0.1, 2)).toBeLessThan(0.06);
    for (const [a, bound] of [
      [1, 0.6],
      [0, 0],
      [-4, 0],
    ] as const)
      expect(boundOfRoot(a, bound, Math.sqrt(Math.abs(a)))).toBe(Infinity);
  });
  it('is without end near a right angle and near a sine of one', () => {
    expect(boundOfTangent(45, 1e-9, 1)).toBeLessThan(1e-8);
    expect(boundOfTangent(45, 1e-9, 1)).toBeGreaterThan(3.4e-11);
    expect(boundOfTangent(90, 1e-9, 1e12)).toBe(Infinity);
    // arcsin 0.9 is 64.16 degrees, arcsin 0.95 is 71.81.
    expect(boundOfArcSine(0.9, 0.05, 64.16)).toBeGreaterThan(7.65);
    expect(boundOfArcSine(0.9, 0.05, 64.16)).toBeLessThan(20);
    for (const bound of [0.01, 0.02, 1.5]) expect(boundOfArcSine(0.99, bound, 81.9)).toBe(Infinity);
    expect(boundOfArcSine(0.5, 1e-9, 30)).toBeLessThan(1e-7);
    // An arc tangent rises by 57.3 degrees for one at zero.
    expect(boundOfArcTangent(0, 0.01, 0)).toBeGreaterThan(0.57);
    expect(boundOfArcTangent(0, 0.01, 0)).toBeLessThan(0.58);
  });
  it('of nothing written down is nothing, and of digits that no double holds is not', () => {
    expect(boundOfDigits(0, 0)).toBe(0);
    expect(boundOfDigits(0, 5)).toBeGreaterThan(0);
    expect([boundOfDigits(7000.5, 5), boundOfDigits(9200, 15)]).toEqual([0, 0]);
    for (const [x, digits] of [
      [9200, 16],
      [0.1, 1],
      [1e15, 15],
      [1e9 + 0.5, 11],
    ] as const)
      expect(boundOfDigits(x, digits)).toBeGreaterThan(0);
  });
});

describe('a bound holds for every figure within the bounds of its parts', () => {
  const figure = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  const off = fc.double({ min: 0, max: 10, noNaN: true });
  const side = fc.constantFrom(-1, 1);
  it('of sums and products', () => {
    fc.assert(
      fc.property(figure, off, figure, off, side, side, (a, da, b, db, s, t) => {
        const [x, y] = [a + s * da, b + t * db];
        const room = 1 + 1e-9;
        expect(Math.abs(x + y - (a + b))).toBeLessThanOrEqual(boundOfSum(a, da, b, db, a + b) * room + 1e-9);
        expect(Math.abs(x * y - a * b)).toBeLessThanOrEqual(boundOfProduct(a, da, b, db, a * b) * room + 1e-3);
      }),
      { numRuns: 500, seed: 3 },
    );
  });
});
