/** The table of products: closed, unambiguous, and true of the sizes of the units. */
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  divide,
  foot,
  inch,
  lb,
  lbPerFt,
  multiply,
  type Quantity,
  quantity,
  ratio,
  scale,
  show,
  type Unit,
  weightToForce,
} from '../../src/units/index.js';
import { products } from '../../src/units/products.js';
import { unitList } from '../../src/units/unit-list.js';
import { type Fraction, fractionOf } from '../helpers/fractions.js';

const sizeOf = (unit: Unit): Fraction => fractionOf(unitList[unit][1]).div(fractionOf(unitList[unit][2]));
/** The functions for a pair that only the loop knows; the types are satisfied by naming one row. */
const times = (a: Quantity<Unit>, b: Quantity<Unit>): Quantity<Unit> =>
  multiply(a as Quantity<'lb/ft'>, b as Quantity<'ft'>) as Quantity<Unit>;
const over = (a: Quantity<Unit>, b: Quantity<Unit>) => divide(a as Quantity<'lb'>, b as Quantity<'ft'>);

describe('the table of products', () => {
  // The printed pound of tire tables (0.4536 kg) is a rule of printing, so the sizes of its row do not multiply.
  it.each(products.filter(([first]) => first !== 'kg/lb'))(
    '%s times %s is %s by the sizes of the units',
    (first, second, result) => {
      const [a, b] = [sizeOf(first), sizeOf(second)];
      expect(a.mul(b)).toEqual(sizeOf(result));
    },
  );
  it.each(products)('%s times %s is %s in either order, and the quotients undo it', (first, second, result) => {
    const [a, b] = [quantity('6.7', first), quantity('2.5', second)];
    for (const made of [times(a, b), times(b, a)]) expect([made.unit, made.value.toFixed()]).toEqual([result, '16.75']);
    const [one, other] = [over(times(a, b), b), over(times(a, b), a)];
    expect(isRight(one) && [one.right.unit, one.right.value.toFixed()]).toEqual([first, '6.7']);
    expect(isRight(other) && [other.right.unit, other.right.value.toFixed()]).toEqual([second, '2.5']);
  });
  it('says one thing for a pair, and one thing for a quotient', () => {
    const made = products.flatMap(([a, b]) => [...new Set([`${a} x ${b}`, `${b} x ${a}`])]);
    expect(made.length).toBe(new Set(made).size);
    const parts = products.flatMap(([a, b, c]) => [...new Set([`${c} / ${a}`, `${c} / ${b}`])]);
    expect(parts.length).toBe(new Set(parts).size);
  });
  it('lets a plain number multiply and divide anything, and figures of one unit make a plain number', () => {
    expect(show(multiply(lb(2540), ratio(4)))).toBe('10,160 lb');
    expect(show(multiply(ratio(4), lb(2540)))).toBe('10,160 lb');
    expect(show(scale(lb(2540), 4))).toBe('10,160 lb');
    const share = divide(lb(1500), lb(10000));
    expect(isRight(share) && show(share.right)).toBe('0.15');
  });
  it('answers a zero divisor with a Left', () => {
    for (const zero of [0, -0, '0.000']) {
      const answer = divide(lb(134), foot(zero));
      expect(isLeft(answer) && answer.left).toEqual({
        chapter: 'units',
        tag: 'DivisionByZero',
        dividend: 'lb',
        divisor: 'ft',
      });
      expect(isLeft(answer) && describeError(answer.left)).toBe(
        'the divisor of lb divided by ft is zero; it must be another figure',
      );
    }
  });
  it('refuses at run time what a cast brought past the compiler', () => {
    expect(() => times(lb(1), lb(1))).toThrow('no product of lb and lb in the table');
    expect(() => over(lb(1), quantity(1, 'psi'))).toThrow('no quotient of lb and psi in the table');
  });
  it('keeps weight and force apart but for one bridge', () => {
    expect(show(multiply(lbPerFt('6.7'), foot(20)))).toBe('134 lb');
    expect(show(weightToForce(lb(9200)))).toBe('9,200 lbf');
    expect(show(multiply(weightToForce(lb(9200)), inch(12)))).toBe('110,400 lbf\u00b7in');
  });
});
