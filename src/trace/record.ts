/**
 * The recorded steps: each computes a figure and keeps what it did. These are the only way to arithmetic with working.
 *
 * The first argument is the name of the result in formulas, or null for a step written inside its user's formula.
 */
import { factorBetween } from '../units/convert.js';
import type { Quantity, RoundingMode, SameDimension, Unit } from '../units/index.js';
import { type Decimal, ofDecimal } from '../units/internal.js';
import {
  type Divisor,
  type Multiplier,
  type Product,
  type Quotient,
  unitOfProduct,
  unitOfQuotient,
} from '../units/products.js';
import { type Basis, weaker } from './basis.js';
import type { Computed, Derived, Node, Operation } from './node.js';
import { decimalReading } from './reading.js';
import type { Source } from './source.js';

/** The name of a result in formulas; null for a step that is written inside its user's formula. */
export type Name = string | null;
type Extra = Pick<Computed, 'factor' | 'rounding'>;

const plainStep: Extra = {};

function step<U extends Unit>(
  symbol: Name,
  operation: Operation,
  parts: readonly Derived<Unit>[],
  figure: Decimal,
  unit: U,
  source: Source | undefined,
  { factor, rounding } = plainStep,
): Derived<U> {
  const value = ofDecimal(figure, unit);
  const of: Node[] = [];
  let basis: Basis = 'scale';
  for (const { why } of parts) {
    of.push(why);
    basis = weaker(basis, why.basis);
  }
  const why: Computed = {
    kind: 'computed',
    operation,
    of,
    value,
    basis,
    symbol: symbol ?? undefined,
    source,
    factor,
    rounding,
  };
  return { value, why };
}

/** For one unit this adds nothing to a type; for a union of units it is what no list has, and its name is the compiler's message. */
type InOneUnit<U extends Unit, V extends Unit = U> = U extends unknown
  ? [V] extends [U]
    ? unknown
    : { readonly 'not in one unit': V }
  : never;

/** Figures of one unit: pounds beside feet in one list do not compile. */
export type Terms<U extends Unit> = readonly Derived<U>[] & InOneUnit<U>;

function sameUnits(first: Derived<Unit>, others: readonly Derived<Unit>[]): void {
  for (const other of others) {
    if (other.value.unit !== first.value.unit)
      throw new TypeError(`${other.value.unit} is not ${first.value.unit}: convert it by name first`);
  }
}

const bare = (parts: readonly Derived<Unit>[]): Decimal[] => parts.map((part) => part.value.value);

/** `a + b + ...` in one unit; at least one term. @example sum('gross', [given('trailer', lb(3200)), given('machine', lb(9200))]) // 12,400 lb */
export function sum<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U> {
  const first = terms[0];
  if (first === undefined) throw new RangeError('a sum of nothing has no unit');
  sameUnits(first, terms);
  return step(symbol, 'sum', terms, decimalReading.sum(bare(terms)), first.value.unit, source);
}

/** `a - b` in one unit; exactly zero when the two agree to 24 digits, so that no margin of nothing gets a sign. @example difference('rest', given('GVWR', lb(14000)), grossWeight) // 1,600 lb */
export function difference<U extends Unit>(
  symbol: Name,
  a: Derived<U>,
  b: Derived<NoInfer<U>>,
  source?: Source,
): Derived<U> {
  sameUnits(a, [b]);
  return step(
    symbol,
    'difference',
    [a, b],
    decimalReading.difference(a.value.value, b.value.value),
    a.value.unit,
    source,
  );
}

/** `a x b`, if the table of products has the pair. @example product('tongue load', grossWeight, given('tongue share', ratio('0.12'))) // 1,488 lb */
export function product<A extends Unit, B extends Multiplier<A>>(
  symbol: Name,
  a: Derived<A>,
  b: Derived<B>,
  source?: Source,
): Derived<Product<A, B>> {
  const unit = unitOfProduct(a.value.unit, b.value.unit) as Product<A, B>;
  return step(symbol, 'product', [a, b], decimalReading.product(a.value.value, b.value.value), unit, source);
}

/** `a / b`, if the table of products has the pair. The caller has ruled out a zero divisor. @example quotient('each axle', given('axle load', lb(10800)), constant(ratio(2))) // 5,400 lb */
export function quotient<A extends Unit, B extends Divisor<A>>(
  symbol: Name,
  a: Derived<A>,
  b: Derived<B>,
  source?: Source,
): Derived<Quotient<A, B>> {
  const unit = unitOfQuotient(a.value.unit, b.value.unit) as Quotient<A, B>;
  return step(symbol, 'quotient', [a, b], decimalReading.quotient(a.value.value, b.value.value), unit, source);
}

/** The least of one or more figures in one unit. @example leastOf('axle rating', [given('beam', lb(5200)), given('tires', lb(5080))]) // 5,080 lb */
export function leastOf<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U>;
/** The same, written inside the formula that uses it. */
export function leastOf<U extends Unit>(terms: Terms<U>): Derived<U>;
export function leastOf<U extends Unit>(first: Name | Terms<U>, list?: Terms<U>, source?: Source): Derived<U> {
  const [symbol, terms] = list === undefined ? [null, first as Terms<U>] : [first as Name, list];
  const one = terms[0];
  if (one === undefined) throw new RangeError('the least of nothing');
  sameUnits(one, terms);
  return step(symbol, 'least', terms, decimalReading.least(bare(terms)), one.value.unit, source);
}

/** The greatest of one or more figures in one unit. @example greatestOf('longer', [given('left', inch(96)), given('right', inch(97))]) // 97 in */
export function greatestOf<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U>;
/** The same, written inside the formula that uses it. */
export function greatestOf<U extends Unit>(terms: Terms<U>): Derived<U>;
export function greatestOf<U extends Unit>(first: Name | Terms<U>, list?: Terms<U>, source?: Source): Derived<U> {
  const [symbol, terms] = list === undefined ? [null, first as Terms<U>] : [first as Name, list];
  const one = terms[0];
  if (one === undefined) throw new RangeError('the greatest of nothing');
  sameUnits(one, terms);
  return step(symbol, 'greatest', terms, decimalReading.greatest(bare(terms)), one.value.unit, source);
}

/** The figure in another unit of its dimension; the figure itself when it is in that unit already. @example converted('length', given('deck', foot(20)), 'in') // 240 in */
export function converted<U extends Unit, T extends SameDimension<U>>(
  symbol: Name,
  a: Derived<U>,
  unit: T,
): Derived<T> {
  if ((a.value.unit as Unit) === unit) return a as unknown as Derived<T>;
  const factor = factorBetween(a.value.unit, unit);
  return step(symbol, 'convert', [a], decimalReading.convert(a.value.value, factor), unit, undefined, { factor });
}

/** The weight in pounds as the force it presses with: `weightToForce`, recorded. @example weightAsForce('force', grossWeight) // 12,400 lbf */
export function weightAsForce(symbol: Name, weight: Derived<'lb'>): Derived<'lbf'> {
  return step(symbol, 'relabel', [weight], weight.value.value, 'lbf', undefined);
}

/** A step that rounds: the mode and the step are part of the working. @example rounded('printed', given('load', lb('2537.5')), lb(5), 'nearest') // 2,540 lb */
export function rounded<U extends Unit>(
  symbol: Name,
  a: Derived<U>,
  to: Quantity<NoInfer<U>>,
  mode: RoundingMode,
  source?: Source,
): Derived<U> {
  const rounding = { mode, step: to.value };
  return step(symbol, 'round', [a], decimalReading.round(a.value.value, to.value, mode), a.value.unit, source, {
    rounding,
  });
}

/** A capacity, rounded down to a multiple of `to`. @example roundedDown('payload', given('allowed', lb('7549.9')), lb(1)) // 7,549 lb */
export const roundedDown = <U extends Unit>(symbol: Name, a: Derived<U>, to: Quantity<NoInfer<U>>): Derived<U> =>
  rounded(symbol, a, to, 'down');

/** A load, rounded up to a multiple of `to`. @example roundedUp('load', given('counted', lb('1631.2')), lb(1)) // 1,632 lb */
export const roundedUp = <U extends Unit>(symbol: Name, a: Derived<U>, to: Quantity<NoInfer<U>>): Derived<U> =>
  rounded(symbol, a, to, 'up');

const squares = { in2: 'in', ft2: 'ft', m2: 'm', ratio: 'ratio' } as const satisfies Partial<Record<Unit, Unit>>;

/** The units that have a square root. */
export type Rootable = keyof typeof squares;
/** The unit of the square root. */
export type RootOf<U extends Rootable> = (typeof squares)[U];

/** The square root of an area is a length, of a plain number a plain number. The caller has ruled out a negative one. @example squareRoot('side', given('area', inch2(9))) // 3 in */
export function squareRoot<U extends Rootable>(symbol: Name, a: Derived<U>, source?: Source): Derived<RootOf<U>> {
  return step(symbol, 'squareRoot', [a], decimalReading.squareRoot(a.value.value), squares[a.value.unit], source);
}

/** A plain number to a power. The caller has ruled out a negative one. @example power('ratio of loads', constant(ratio(4)), constant(ratio('0.5'))) // 2 */
export const power = (symbol: Name, a: Derived<'ratio'>, b: Derived<'ratio'>, source?: Source): Derived<'ratio'> =>
  step(symbol, 'power', [a, b], decimalReading.power(a.value.value, b.value.value), 'ratio', source);

/** The sine of an angle. @example sine('rise of one', given('angle', degree(30))) // 0.5 */
export const sine = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  step(symbol, 'sine', [a], decimalReading.sine(a.value.value), 'ratio', undefined);
/** The cosine of an angle. @example cosine('run of one', given('angle', degree(60))) // 0.5 */
export const cosine = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  step(symbol, 'cosine', [a], decimalReading.cosine(a.value.value), 'ratio', undefined);
/** The tangent of an angle. @example tangent('slope', given('angle', degree(45))) // 1 */
export const tangent = (symbol: Name, a: Derived<'deg'>): Derived<'ratio'> =>
  step(symbol, 'tangent', [a], decimalReading.tangent(a.value.value), 'ratio', undefined);
/** The caller has ruled out a figure outside -1 to 1. @example arcSine('angle', constant(ratio('0.5'))) // 30 deg */
export const arcSine = (symbol: Name, a: Derived<'ratio'>): Derived<'deg'> =>
  step(symbol, 'arcSine', [a], decimalReading.arcSine(a.value.value), 'deg', undefined);
/** The angle of a slope. @example arcTangent('angle', constant(ratio(1))) // 45 deg */
export const arcTangent = (symbol: Name, a: Derived<'ratio'>): Derived<'deg'> =>
  step(symbol, 'arcTangent', [a], decimalReading.arcTangent(a.value.value), 'deg', undefined);
