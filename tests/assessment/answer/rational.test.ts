/** The fractions that answers are verified with, against an independent library of fractions and published values. */
import { Decimal as OpenDecimal } from 'decimal.js';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  digitsOf,
  floor,
  order,
  over,
  plus,
  type Rational,
  rational,
  rationalOf,
  snappedMinus,
  snappedOrder,
  times,
} from '../../../src/assessment/answer/rational.js';
import {
  arcSine,
  arcTangent,
  cosine,
  power,
  sine,
  squareRoot,
  tangent,
} from '../../../src/assessment/answer/rational-functions.js';
import { rounded, snappedSum } from '../../../src/assessment/answer/rational-steps.js';
import { Decimal } from '../../../src/units/internal.js';
import { roundToStep } from '../../../src/units/rounding.js';

const read = (digits: string): Rational => rationalOf(digits) as Rational;
const shown = (figure: Rational | undefined, places: number): string => (figure ? digitsOf(figure, places) : 'none');
const fractions = fc.tuple(fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }), fc.bigInt({ min: 1n, max: 10n ** 12n }));
const same = (mine: Rational, theirs: Fraction): boolean =>
  theirs.equals(new Fraction(mine.top, mine.bottom)) && mine.bottom > 0n && mine.bottom === theirs.d;

describe('fractions', () => {
  it('agree with fraction.js in the four operations, order and floor', () => {
    fc.assert(
      fc.property(fractions, fractions, ([a, b], [c, d]) => {
        const [x, y] = [rational(a, b), rational(c, d)];
        const [f, g] = [new Fraction(a, b), new Fraction(c, d)];
        expect(same(plus(x, y), f.add(g))).toBe(true);
        expect(same(times(x, y), f.mul(g))).toBe(true);
        if (c !== 0n) expect(same(over(x, y), f.div(g))).toBe(true);
        expect(order(x, y)).toBe(f.compare(g));
        expect(floor(x)).toBe(f.floor().n * f.floor().s);
      }),
    );
  });
  it('read digits and nothing else', () => {
    expect(read('-12.50')).toEqual({ top: -25n, bottom: 2n });
    for (const text of ['', '1e5', '.5', '5.', '+1', '0x10', 'NaN', ' 1', '1,000', '9'.repeat(500)])
      expect(rationalOf(text), text).toBeUndefined();
  });
  it('count figures as one that agree to 24 digits, as the recorded steps do', () => {
    const third = over(rational(1000n), rational(3n));
    expect(snappedOrder(read('333.333333333333333333333333333333'), third)).toBe(0);
    expect(snappedOrder(read('333.33333333333333333333'), third)).toBe(-1);
    expect(snappedMinus(read('333.333333333333333333333333333333'), third).top).toBe(0n);
    expect(snappedSum([read('1'), read('-0.9999999999999999999999999999')]).top).toBe(0n);
  });
});

describe('rounding', () => {
  it('is that of the recorded steps, in every mode', () => {
    const digits = fc.tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 0, max: 99_999 }));
    fc.assert(
      fc.property(digits, fc.constantFrom('1', '5', '0.1', '0.25'), ([whole, part], step) => {
        const text = `${whole}.${String(part).padStart(5, '0')}`;
        for (const mode of ['down', 'up', 'nearest', 'nearest-down'] as const) {
          const theirs = roundToStep(new Decimal(text), new Decimal(step), mode).toFixed();
          expect(
            order(rounded(read(text), read(step), mode) as Rational, read(theirs)),
            `${text} ${step} ${mode}`,
          ).toBe(0);
        }
      }),
    );
    expect(rounded(read('1'), read('1'), 'sideways')).toEqual(read('1'));
    expect(rounded(read('1.5'), read('1'), 'sideways')).toBeUndefined();
  });
  it('sends halves where their name says', () => {
    const all = (mode: string) =>
      ['2.5', '-2.5', '0.5', '-0.5'].map((text) => shown(rounded(read(text), read('1'), mode), 1));
    expect(all('nearest')).toEqual(['3', '-3', '1', '-1']);
    expect(all('nearest-down')).toEqual(['2', '-2', '0', '0']);
  });
});

/** Square root of 2, e and ln 2: the digits of the OEIS, A002193, A001113, A002162; the sine of 1 degree: A019810. */
describe('roots, powers and angles', () => {
  it('agree with published digits', () => {
    expect(shown(squareRoot(read('2')), 50)).toBe('1.41421356237309504880168872420969807856967187537695');
    expect(shown(squareRoot(read('12.25')), 50)).toBe('3.5');
    expect(shown(sine(read('1')), 40)).toBe('0.0174524064372835128194189785163161924723');
    expect(shown(sine(read('30')), 50)).toBe('0.5');
    expect(shown(cosine(read('60')), 50)).toBe('0.5');
    expect(shown(tangent(read('45')), 50)).toBe('1');
    expect(shown(arcSine(read('0.5')), 50)).toBe('30');
    expect(shown(arcSine(read('-1')), 50)).toBe('-90');
    expect(shown(arcTangent(read('1')), 50)).toBe('45');
    expect(shown(arcTangent(read('-1')), 50)).toBe('-45');
    expect(shown(arcTangent(read('0')), 50)).toBe('0');
    expect(shown(power(read('0.0001'), read('-2.5')), 20)).toBe('10000000000');
    expect(shown(power(read('16'), read('-0.25')), 40)).toBe('0.5');
    expect(shown(power(read('3'), read('17')), 10)).toBe('129140163');
    expect(shown(power(read('0'), read('2')), 10)).toBe('0');
    expect(shown(power(read('2'), read('0.5')), 50)).toBe('1.41421356237309504880168872420969807856967187537695');
    expect(shown(power(read('2'), read('-3')), 50)).toBe('0.125');
    expect(shown(power(read('0.5'), read('100')), 50)).toBe('0.00000000000000000000000000000078886090522101180541');
  });
  it('agree with decimals of 34 digits to 28 places', () => {
    const Own = OpenDecimal.clone({ defaults: true, precision: 34, rounding: OpenDecimal.ROUND_HALF_EVEN });
    const near = (mine: Rational | undefined, theirs: OpenDecimal): void =>
      expect(shown(mine, 28)).toBe(theirs.toDecimalPlaces(28, OpenDecimal.ROUND_HALF_UP).toFixed());
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 1, max: 2000 }), (n, exponent) => {
        const text = (n / 1_000_000).toFixed(6);
        const [mine, theirs] = [read(text), new Own(text)];
        near(squareRoot(mine), theirs.sqrt());
        near(arcTangent(mine), theirs.atan().times(180).div(Own.acos(-1)));
        near(power(mine, read((exponent / 1000).toFixed(3))), theirs.pow((exponent / 1000).toFixed(3)));
      }),
      { numRuns: 60 },
    );
  });
  it('have no figure where there is none', () => {
    expect(squareRoot(read('-1'))).toBeUndefined();
    expect(tangent(read('90'))).toBeDefined(); // 70 digits of pi are no right angle: a huge figure, and no answer agrees with it
    expect(arcSine(read('1.1'))).toBeUndefined();
    expect(power(read('-1'), read('0.5'))).toBeUndefined();
    expect(power(read('0'), read('-1'))).toBeUndefined();
    expect(power(read('10'), read('100000'))).toBeUndefined();
  });
});
