/** When two figures are the same figure: the quick tests by size and first digits say what the plain definitions say. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDecimals, snap, snappedDifference } from '../../src/units/closeness.js';
import { Decimal } from '../../src/units/decimal.js';

const plainSame = (a: Decimal, b: Decimal): boolean =>
  a.minus(b).abs().lte(Decimal.max(a.abs(), b.abs()).times('1e-24'));

/** As the comment says it: within 1e-30 of a figure of at most 24 digits. */
function plainSnap(value: Decimal): Decimal {
  const short = value.toSignificantDigits(24);
  return value.minus(short).abs().lte(short.abs().times('1e-30')) ? short : value;
}

const digits = fc
  .tuple(fc.bigInt({ min: -(10n ** 34n), max: 10n ** 34n }), fc.integer({ min: -40, max: 10 }))
  .map(([whole, e]) => new Decimal(`${whole}e${e}`));
const short = fc
  .tuple(fc.integer({ min: -99999999, max: 99999999 }), fc.integer({ min: -6, max: 3 }))
  .map(([whole, e]) => new Decimal(`${whole}e${e}`));
const figure = fc.oneof(
  short,
  digits,
  fc
    .constantFrom('0', '-0', '1', '0.1', '9.999999', '10', '9999999', '10000000', '9.999999999999999999999999', '1e-24')
    .map((text) => new Decimal(text)),
);
/** A figure and one beside it, at a distance around the one where sameness ends. */
const pair = fc.oneof(
  fc.tuple(figure, figure),
  fc
    .tuple(figure, fc.integer({ min: -34, max: -1 }), fc.integer({ min: -12, max: 12 }))
    .map(([a, places, by]): [Decimal, Decimal] => [a, a.plus(a.times(`${by}e${places}`))]),
);

describe('sameness', () => {
  it('is agreement to 24 digits of the larger figure, for any two', () => {
    fc.assert(
      fc.property(pair, ([a, b]) => {
        expect(snappedDifference(a, b).isZero()).toBe(plainSame(a, b));
        if (!plainSame(a, b)) expect(snappedDifference(a, b).eq(a.minus(b))).toBe(true);
        expect(compareDecimals(a, b)).toBe(plainSame(a, b) ? 0 : a.cmp(b));
      }),
      { numRuns: 5000 },
    );
  });

  it('snaps to a figure of at most 24 digits only from within 1e-30 of it', () => {
    const beside = fc
      .tuple(short, fc.integer({ min: -33, max: -20 }), fc.integer({ min: -12, max: 12 }))
      .map(([a, places, by]) => a.plus(a.times(`${by}e${places}`)));
    fc.assert(
      fc.property(fc.oneof(figure, beside), (value) => {
        expect(snap(value).eq(plainSnap(value))).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });
});
