/** Lists of figures in one unit, and the steps over them: sum, least, greatest. */
import { boundOfSum, boundOfTotal } from '../units/doubles.js';
import { boundOf, doubleOf } from '../units/figure.js';
import type { Unit } from '../units/index.js';
import { compareFigures } from '../units/order.js';
import { type Basis, weaker } from './basis.js';
import type { Computed, Derived, Node, Operation } from './node.js';
import type { Source } from './source.js';
import { type Name, recorded, recordedOfTwo } from './step.js';

/** `unknown` for one unit; for a union of units a property no array has, so that a mixed list fails to compile with that property's name as the message. */
type InOneUnit<U extends Unit, V extends Unit = U> = U extends unknown
  ? [V] extends [U]
    ? unknown
    : { readonly 'not in one unit': V }
  : never;

/** Figures of one unit: pounds and feet in one list do not compile. */
export type Terms<U extends Unit> = readonly Derived<U>[] & InOneUnit<U>;

/** The types say it already; a union of units could still slip two kinds in, and that must never pass in silence. */
export function sameUnit(a: Derived<Unit>, b: Derived<Unit>): void {
  if (a.value.unit !== b.value.unit)
    throw new TypeError(`${b.value.unit} is not ${a.value.unit}: convert it by name first`);
}

/** `a + b + ...` in one unit; at least one term. @example sum('gross', [given('trailer', lb(3200)), given('machine', lb(9200))]) // 12,400 lb */
export function sum<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U> {
  const first = terms[0];
  const second = terms[1];
  if (first === undefined) throw new RangeError('a sum of nothing has no unit');
  if (second === undefined || terms.length > 2) return sumOfMany(symbol, first, terms, source);
  sameUnit(first, second);
  const a = doubleOf(first.value);
  const b = doubleOf(second.value);
  const bound = boundOfSum(a, boundOf(first.value), b, boundOf(second.value), a + b);
  return recordedOfTwo(symbol, 'sum', first, second, first.value.unit, a + b, bound, source);
}

function sumOfMany<U extends Unit>(
  symbol: Name,
  first: Derived<U>,
  terms: readonly Derived<U>[],
  source: Source | undefined,
): Derived<U> {
  let total = doubleOf(first.value);
  let bound = boundOf(first.value);
  let sizes = Math.abs(total);
  for (let i = 1; i < terms.length; i += 1) {
    const term = terms[i] as Derived<U>;
    sameUnit(first, term);
    const next = doubleOf(term.value);
    const before = total;
    total += next;
    bound = boundOfSum(before, bound, next, boundOf(term.value), total);
    sizes += Math.abs(next);
  }
  return listed(symbol, 'sum', terms, first.value.unit, total, boundOfTotal(bound, sizes), source);
}

function listed<U extends Unit>(
  symbol: Name,
  operation: Operation,
  terms: readonly Derived<U>[],
  unit: U,
  double: number,
  bound: number,
  source: Source | undefined,
): Derived<U> {
  const of: Node[] = [];
  let basis: Basis = 'scale';
  for (const { why } of terms) {
    of.push(why);
    basis = weaker(basis, why.basis);
  }
  return recorded(symbol, operation, of, basis, unit, double, bound, source);
}

/** The least or the greatest keeps the very figure of its term. */
function picked<U extends Unit>(
  symbol: Name,
  operation: 'least' | 'greatest',
  terms: readonly Derived<U>[],
  source: Source | undefined,
): Derived<U> {
  const [first] = terms;
  if (first === undefined) throw new RangeError(`the ${operation} of nothing`);
  const better = operation === 'least' ? -1 : 1;
  let best = first.value;
  const of: Node[] = [];
  let basis: Basis = 'scale';
  for (const term of terms) {
    sameUnit(first, term);
    if (compareFigures(term.value, best) === better) best = term.value;
    of.push(term.why);
    basis = weaker(basis, term.why.basis);
  }
  const why: Computed = {
    kind: 'computed',
    operation,
    of,
    value: best,
    basis,
    symbol: symbol ?? undefined,
    source,
    factor: undefined,
    rounding: undefined,
  };
  return { value: best, why };
}

/** The least of one or more figures in one unit. @example leastOf('axle rating', [given('beam', lb(5200)), given('tires', lb(5080))]) // 5,080 lb */
export function leastOf<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U>;
/** The same, written inside the formula that uses it. */
export function leastOf<U extends Unit>(terms: Terms<U>): Derived<U>;
export function leastOf<U extends Unit>(first: Name | Terms<U>, list?: Terms<U>, source?: Source): Derived<U> {
  return list === undefined
    ? picked(null, 'least', first as Terms<U>, undefined)
    : picked(first as Name, 'least', list, source);
}

/** The greatest of one or more figures in one unit. @example greatestOf('longer', [given('left', inch(96)), given('right', inch(97))]) // 97 in */
export function greatestOf<U extends Unit>(symbol: Name, terms: Terms<U>, source?: Source): Derived<U>;
/** The same, written inside the formula that uses it. */
export function greatestOf<U extends Unit>(terms: Terms<U>): Derived<U>;
export function greatestOf<U extends Unit>(first: Name | Terms<U>, list?: Terms<U>, source?: Source): Derived<U> {
  return list === undefined
    ? picked(null, 'greatest', first as Terms<U>, undefined)
    : picked(first as Name, 'greatest', list, source);
}
