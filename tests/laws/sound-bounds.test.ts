/** Every double of a step stands within its bound of its decimal, of round figures and of crooked ones, of large and of small. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcSine,
  arcTangent,
  constant,
  converted,
  cosine,
  type Derived,
  decide,
  difference,
  given,
  holdsFor,
  nodesOf,
  product,
  quotient,
  rounded,
  sine,
  squareRoot,
  sum,
  tangent,
} from '../../src/trace/index.js';
import { boundOf, doubleOf } from '../../src/units/figure.js';
import { degree, inch, inch2, lb, ratio, show, showBrief, type Unit } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { compareProducts } from '../../src/units/order.js';
import { exactly } from '../oracle/sixty-digits.js';

/** Whole pounds, eighths, tenths, thirds cut off, figures of 30 digits, figures that no exact double holds. */
const digits = fc.oneof(
  fc.integer({ min: -20_000, max: 20_000 }).map(String),
  fc.integer({ min: -200_000, max: 200_000 }).map((n) => String(n / 8)),
  fc.integer({ min: -99_999, max: 99_999 }).map((n) => String(n / 10)),
  fc.integer({ min: -999, max: 999 }).map((n) => new Decimal(n).div(3).toFixed()),
  fc.constantFrom('0', '1', '-1', '0.3', '1e-20', '9007199254740993', '-123456789012345678901234.5', '1099511627776.5'),
);
const positive = digits.map((text) => new Decimal(text).abs().plus('0.25').toFixed());
const share = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => String(n / 1_000_000));
const angle = fc.oneof(
  fc.integer({ min: -36_000, max: 36_000 }).map((n) => String(n / 100)),
  fc.constantFrom('0', '30', '45', '60', '89.9999', '90.0001', '180', '3599', '3600', '3601', '-720'),
);

/** The figures of the steps, whatever a caller must rule out left out. */
function figuresOf(steps: readonly (() => Derived<Unit>)[]): readonly Derived<Unit>[] {
  return steps.flatMap((step) => {
    try {
      return [step()];
    } catch (problem) {
      if (problem instanceof RangeError) return [];
      throw problem;
    }
  });
}

function expectSound(figures: readonly Derived<Unit>[]): void {
  for (const { symbol, kind, value } of nodesOf(figures.map(({ why }) => why))) {
    const off = exactly(doubleOf(value)).minus(value.value.toFixed()).abs();
    if (off.gt(boundOf(value)))
      throw new Error(
        `${symbol ?? kind} ${value.value.toFixed()} is ${off.toFixed()} off its double, bound ${boundOf(value)}`,
      );
  }
}

describe('the bound of a step', () => {
  it('holds for sums, products, quotients, conversions and roundings of any figures', () => {
    fc.assert(
      fc.property(digits, digits, positive, fc.constantFrom(1, 2, 3, 5, 7, 9, 11, 32), (first, second, third, by) => {
        const [a, b, c, n] = [
          given('a', lb(first)),
          given('b', lb(second)),
          given('c', lb(third)),
          constant(ratio(by)),
        ];
        const third1 = quotient('third', a, constant(ratio(3)));
        const tenth = product('tenth', b, constant(ratio('0.1')));
        expectSound(
          figuresOf([
            () => sum('s', [a, b]),
            () => sum('s', [a, b, third1, tenth]),
            () => difference('d', sum(null, [a, tenth]), a),
            () => difference('d', third1, tenth),
            () => product('p', third1, ratioOf(tenth)),
            () => product('p', a, ratioOf(b)),
            () => quotient('q', a, n),
            () => quotient('q', third1, c),
            () => quotient('q', a, tenth),
            () => difference('nothing', product(null, third1, constant(ratio(3))), a),
            () => converted('kg', third1, 'kg'),
            () => converted('back', converted(null, a, 'kg'), 'lb'),
            () => converted('tonnes', b, 't'),
            () => rounded('down', third1, lb(by), 'down'),
            () => rounded('up', tenth, lb('0.3'), 'up'),
            () => rounded('near', a, lb('0.5'), 'nearest'),
            () => rounded('near', b, lb(1), 'nearest-down'),
          ]),
        );
      }),
      { numRuns: 150, seed: 11 },
    );
  });
  it('holds for roots and angles', () => {
    fc.assert(
      fc.property(positive, share, angle, fc.constantFrom('0', '1e-12', '0.001', '0.5'), (area, part, turn, off) => {
        const x = given('x', degree(turn));
        // A figure that is known to a bound only: what a division by three and a product by three leave.
        const about = sum('about', [x, product(null, quotient(null, given('off', degree(off)), three), three)]);
        const slope = given('part', ratio(part));
        const near = product('near', quotient(null, slope, three), three);
        expectSound(
          figuresOf([
            () => squareRoot('root', given('area', inch2(area))),
            () => squareRoot('root', product(null, quotient(null, given('area', inch2(area)), three), three)),
            () => sine('sine', x),
            () => cosine('cosine', about),
            () => tangent('tangent', x),
            () => tangent('tangent', about),
            () => arcSine('arc sine', slope),
            () => arcSine('arc sine', near),
            () => arcTangent('arc tangent', quotient(null, slope, constant(ratio('0.001')))),
            () => arcTangent('arc tangent', near),
          ]),
        );
      }),
      { numRuns: 60, seed: 12 },
    );
  });
  it('is nothing for whole pounds, halves and moments of round trailers, so that no decimal is asked', () => {
    const [w, x] = [given('w', lb(9200)), given('x', inch('171.5'))];
    const steps = [
      sum('s', [w, given('v', lb('3200.25'))]),
      difference('d', w, given('v', lb(3200))),
      product('moment', w, x),
      quotient('half', w, constant(ratio(2))),
      quotient('place', product(null, w, x), w),
      rounded('down', quotient(null, w, constant(ratio(16))), lb(5), 'down'),
      converted('feet', given('deck', inch(240)), 'ft'),
      squareRoot('side', given('area', inch2('12.25'))),
    ];
    for (const { value, why } of steps) expect(boundOf(value), why.symbol).toBe(0);
  });
  it('of anything else is a share of it that no print shows', () => {
    const w = given('w', lb(9200));
    const steps = [
      quotient('third', w, three),
      product('tenth', w, constant(ratio('0.1'))),
      sum('s', [w, given('v', lb('0.1'))]),
      converted('kg', w, 'kg'),
      sine('sine', given('x', degree(12))),
      tangent('tangent', given('x', degree(80))),
      arcSine('arc sine', constant(ratio('0.3'))),
      arcTangent('arc tangent', constant(ratio('0.3'))),
      squareRoot('root', given('area', inch2(2))),
    ];
    for (const { value, why } of steps) {
      expect(boundOf(value), why.symbol).toBeGreaterThan(0);
      expect(boundOf(value) / Math.abs(doubleOf(value)), why.symbol).toBeLessThan(1e-10);
    }
  });
});

const three = constant(ratio(3));
const ratioOf = (weight: Derived<'lb'>): Derived<'ratio'> => quotient(null, weight, constant(lb(1)));

describe('what doubles decide', () => {
  it('is what the decimals decide: order, order of products, print', () => {
    fc.assert(
      fc.property(
        digits,
        digits,
        positive,
        fc.constantFrom('0', '1e-30', '1e-12', '-1e-12', '1'),
        (first, second, third, off) => {
          const a = lb(first);
          const b = lb(new Decimal(first).plus(off).toFixed());
          const c = product(null, quotient(null, given('a', a), three), three).value;
          for (const [left, right] of [
            [a, b],
            [b, a],
            [c, a],
            [a, c],
            [a, lb(second)],
            [c, b],
          ] as const) {
            const gap = left.value.minus(right.value);
            const size = Decimal.max(left.value.abs(), right.value.abs());
            const order = gap.abs().lte(size.times('1e-24')) ? 0 : gap.s;
            for (const comparison of ['<', '<=', '>', '>=', '='] as const)
              expect(decide(given('l', left), comparison, given('r', right)).holds).toBe(
                holdsFor(order as -1 | 0 | 1, comparison),
              );
            expect(compareProducts(left, lb(third), right, lb(third)), `${show(left)} ${show(right)}`).toBe(order);
            expect(compareProducts(lb(third), left, lb(third), right)).toBe(order);
          }
          for (const [figure, places] of [a, b, c].flatMap((each) => [0, 1, 2, 4].map((at) => [each, at] as const))) {
            const cut = figure.value.toSignificantDigits(24);
            const meant = figure.value.minus(cut).abs().lte(cut.abs().times('1e-30')) ? cut : figure.value;
            const short = meant.toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
            expect(showBrief(figure, places), `${show(figure)} to ${places}`).toBe(show(lb(short)));
          }
        },
      ),
      { numRuns: 150, seed: 13 },
    );
  });
});
