/** The leaves of a working: what was given, what was looked up, what belongs to the formula. */
import { convert, type Decimal, type Quantity, type SameDimension, type Unit } from '../units/index.js';
import type { Basis } from './basis.js';
import type { Computed, Derived, Given, Known } from './node.js';
import type { Source } from './source.js';

/**
 * Takes a figure into the working under a name.
 *
 * @param symbol what it is called in formulas, in shop words: `machine weight`
 * @param basis how well it is known; `stated` when there is no better
 * @param path its path in a spec, such as `cargo.0.weight`
 * @param between the least and the most this input may be, in any unit of its dimension; for studies
 * @example given('gross rating', lb(14000), 'label')
 */
export function given<U extends Unit>(
  symbol: string,
  value: Quantity<U>,
  basis: Basis = 'stated',
  path?: string,
  between?: readonly [Quantity<SameDimension<U>>, Quantity<SameDimension<U>>],
): Derived<U> {
  const ends = between?.map((end) => convert(end as Quantity<Unit>, value.unit as never).value) as
    | [Decimal, Decimal]
    | undefined;
  return { value, why: { kind: 'given', symbol, value, basis, path, between: ends } };
}

/** A figure read from a table: its name, the row's key and the source go with it. @example fromTable('tire load', lb(2540), { table: 'inflation', key: 'row', source: fromMemory('tire loads') }) // 2,540 lb */
export function fromTable<U extends Unit>(
  symbol: string,
  value: Quantity<U>,
  from: { table: string; key: string; source: Source },
): Derived<U> {
  Object.freeze(from.source);
  return Object.freeze({
    value,
    why: Object.freeze({ kind: 'looked up', symbol, value, basis: 'published', ...from }),
  });
}

/** A number that belongs to a formula. It weakens nothing. @example constant(ratio('1.10'), 'passenger tire divisor') // 1.1 */
export function constant<U extends Unit>(value: Quantity<U>, symbol?: string, source?: Source): Derived<U> {
  Object.freeze(source);
  return Object.freeze({ value, why: Object.freeze({ kind: 'constant', symbol, value, basis: 'scale', source }) });
}

const isDerived = <U extends Unit>(known: Known<U>): known is Derived<U> => 'why' in known;

/** A `Known` as a figure with working: taken as given under this name when it brings none. @example asDerived('machine weight', lb(9200)) // 9,200 lb */
export function asDerived<U extends Unit>(symbol: string, figure: Known<U>, basis: Basis = 'stated'): Derived<U> {
  return isDerived(figure) ? figure : given(symbol, figure, basis);
}

/** A step under another name; field by field, because a figure is named once a formula. */
export const namedStep = (
  { operation, of, value, basis, factor, rounding }: Computed,
  symbol: string,
  source: Source | undefined,
): Computed => ({ kind: 'computed', operation, of, value, basis, symbol, source, factor, rounding });

const namedGiven = ({ value, basis, path, between, written }: Given, symbol: string): Given =>
  written === undefined
    ? { kind: 'given', symbol, value, basis, path, between }
    : { kind: 'given', symbol, value, basis, path, between, written };

/** Gives a figure another name in formulas; its working stays the same. @example explain(renamed('weight of the whole', given('gross', lb(12400)))) // weight of the whole = 12,400 lb  [stated] */
export function renamed<U extends Unit>(symbol: string, figure: Derived<U>): Derived<U> {
  const { value, why } = figure;
  if (why.symbol === symbol) return figure;
  if (why.kind === 'computed') return { value, why: namedStep(why, symbol, why.source) };
  return { value, why: why.kind === 'given' ? namedGiven(why, symbol) : { ...why, symbol } };
}
