/**
 * Words for writing a formula: `result('tongue load', minus(gross, axleLoad), statics)`.
 *
 * Each word is a recorded step without a name; it is written inside the formula that uses it. `result` names the step that
 * a formula ends in. A number in a formula is a plain number of that formula: `over(times(pi, d, d), 4)`.
 */

import { type Quantity, type RoundingMode, ratio, type SameDimension, type Unit } from '../units/index.js';
import type { Divisor, Multiplier, Product, Quotient } from '../units/products.js';
import {
  arcSine,
  arcTangent,
  cosine,
  power,
  type Rootable,
  type RootOf,
  sine,
  squareRoot,
  tangent,
} from './functions.js';
import { constant, namedStep } from './leaves.js';
import type { Derived, Node } from './node.js';
import { converted, difference, product, quotient, rounded, weightAsForce } from './record.js';
import type { Source } from './source.js';
import { sum, type Terms } from './terms.js';

/** A part of a formula: a figure with its working, or a plain number. */
export type Term = Derived<Unit> | number;

/** The unit of a part; a number has none and counts as a ratio. */
export type UnitOfTerm<T extends Term> = T extends Derived<infer U> ? U : 'ratio';

type By<U extends Unit> = Derived<Multiplier<U>> | number;
type Times<U extends Unit, B extends Term> = Product<U, UnitOfTerm<B>>;

const numbers = new Map<number, Derived<'ratio'>>();

/** A number of a formula as a figure; the small ones that formulas are made of are made once. */
function plainNumber(n: number): Derived<'ratio'> {
  const found = numbers.get(n);
  if (found !== undefined) return found;
  const made = constant(ratio(n));
  if (numbers.size < 500) numbers.set(n, made);
  return made;
}

const figureOf = (term: Term): Derived<Unit> => (typeof term === 'number' ? plainNumber(term) : term);

/**
 * Names the step that a formula ends in, and its source.
 *
 * @example explain(result('rest', minus(given('GVWR', lb(14000), 'label'), given('gross', lb(12400)))))
 */
export function result<U extends Unit>(symbol: string, figure: Derived<U>, source?: Source): Derived<U> {
  const { value, why } = figure;
  if (why.kind === 'computed') return { value, why: namedStep(why, symbol, source ?? why.source) };
  const named = source === undefined || why.kind === 'given' ? { ...why, symbol } : { ...why, symbol, source };
  return { value, why: named as Node };
}

/** `a x b x ...`, if the table of products has each pair. @example times(2, given('spacing', inch(33))) // 66 in */
export function times<A extends Term, B extends By<UnitOfTerm<A>>>(a: A, b: B): Derived<Times<UnitOfTerm<A>, B>>;
export function times<A extends Term, B extends By<UnitOfTerm<A>>, C extends By<Times<UnitOfTerm<A>, B>>>(
  a: A,
  b: B,
  c: C,
): Derived<Times<Times<UnitOfTerm<A>, B>, C>>;
export function times<
  A extends Term,
  B extends By<UnitOfTerm<A>>,
  C extends By<Times<UnitOfTerm<A>, B>>,
  D extends By<Times<Times<UnitOfTerm<A>, B>, C>>,
>(a: A, b: B, c: C, d: D): Derived<Times<Times<Times<UnitOfTerm<A>, B>, C>, D>>;
export function times(...factors: readonly Term[]): Derived<Unit> {
  let made = figureOf(factors[0] as Term) as Derived<'ratio'>;
  for (let i = 1; i < factors.length; i += 1)
    made = product(null, made, figureOf(factors[i] as Term) as Derived<'ratio'>);
  return made;
}

/** `a / b`, if the table of products has the pair. The caller has ruled out a zero divisor. @example over(given('axle load', lb(10800)), 2) // 5,400 lb */
export function over<A extends Term, B extends Derived<Divisor<UnitOfTerm<A>>> | number>(
  a: A,
  b: B,
): Derived<Quotient<UnitOfTerm<A>, UnitOfTerm<B>>> {
  const quotientOf = quotient(null, figureOf(a) as Derived<'ratio'>, figureOf(b) as Derived<'ratio'>);
  return quotientOf as Derived<Unit> as Derived<Quotient<UnitOfTerm<A>, UnitOfTerm<B>>>;
}

/** `a + b + ...` in one unit. @example plus(given('trailer', lb(3200)), given('machine', lb(9200))) // 12,400 lb */
export function plus(...terms: readonly (Derived<'ratio'> | number)[]): Derived<'ratio'>;
export function plus<U extends Unit>(first: Derived<U>, ...others: readonly Derived<NoInfer<U>>[]): Derived<U>;
export function plus<U extends Unit>(...terms: readonly Derived<U>[]): Derived<U>;
export function plus(...terms: readonly Term[]): Derived<Unit> {
  return sum(null, terms.map(figureOf) as readonly Derived<'ratio'>[] as Terms<'ratio'>);
}

/** `a - b - ...` in one unit. @example minus(1, given('tongue share', ratio('0.12'))) // 0.88 */
export function minus(
  first: Derived<'ratio'> | number,
  ...others: readonly (Derived<'ratio'> | number)[]
): Derived<'ratio'>;
export function minus<U extends Unit>(first: Derived<U>, ...others: readonly Derived<NoInfer<U>>[]): Derived<U>;
export function minus(first: Term, ...others: readonly Term[]): Derived<Unit> {
  let left = figureOf(first);
  for (const term of others) left = difference(null, left, figureOf(term));
  return left;
}

/** The square root: of an area a length, of a plain number a plain number. @example root(given('area', inch2(9))) // 3 in */
export const root = <U extends Rootable>(a: Derived<U>): Derived<RootOf<U>> => squareRoot(null, a);

/** A plain number to a power. @example toThe(given('loads', ratio(4)), 0.5) // 2 */
export const toThe = (a: Derived<'ratio'>, exponent: Derived<'ratio'> | number): Derived<'ratio'> =>
  power(null, a, figureOf(exponent) as Derived<'ratio'>);

/** The sine of an angle. @example sin(given('angle', degree(30))) // 0.5 */
export const sin = (angle: Derived<'deg'>): Derived<'ratio'> => sine(null, angle);
/** The cosine of an angle. @example cos(given('angle', degree(60))) // 0.5 */
export const cos = (angle: Derived<'deg'>): Derived<'ratio'> => cosine(null, angle);
/** The tangent of an angle. @example tan(given('angle', degree(45))) // 1 */
export const tan = (angle: Derived<'deg'>): Derived<'ratio'> => tangent(null, angle);
/** The angle whose sine this is. @example arcsin(given('rise of one', ratio('0.5'))) // 30 deg */
export const arcsin = (a: Derived<'ratio'>): Derived<'deg'> => arcSine(null, a);
/** The angle whose tangent this is. @example arctan(given('slope', ratio(1))) // 45 deg */
export const arctan = (a: Derived<'ratio'>): Derived<'deg'> => arcTangent(null, a);

/** The figure in another unit, inside a formula. @example inUnit(given('deck', foot(20)), 'in') // 240 in */
export const inUnit = <U extends Unit, T extends SameDimension<U>>(a: Derived<U>, unit: T): Derived<T> =>
  converted(null, a, unit);

/** The weight as the force it presses with, inside a formula. @example asForce(given('gross', lb(12400))) // 12,400 lbf */
export const asForce = (weight: Derived<'lb'>): Derived<'lbf'> => weightAsForce(null, weight);

/** The figure rounded to a multiple of a step, inside a formula. @example roundTo(given('spaces', ratio('10.5')), ratio(1), 'up') // 11 */
export const roundTo = <U extends Unit>(a: Derived<U>, step: Quantity<NoInfer<U>>, mode: RoundingMode): Derived<U> =>
  rounded(null, a, step, mode);
