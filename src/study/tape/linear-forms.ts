/**
 * Linear combinations of columns: consecutive linear steps merged into one, `a + b x column + c x other column`, exact until it is run.
 *
 * A tape that ran each addition by itself would spend its time fetching and storing columns. Sums, differences, products
 * with a number, quotients by a number and conversions are therefore gathered into forms, and only forms are run.
 */

import type { Computed } from '../../trace/index.js';
import { Decimal, zero } from '../../units/internal.js';

export interface Form {
  readonly at: Decimal;
  /** By column; never zero. */
  readonly terms: ReadonlyMap<number, Decimal>;
}

const one = new Decimal(1);
const none: ReadonlyMap<number, Decimal> = new Map();

export const numberForm = (at: Decimal): Form => ({ at, terms: none });
export const columnForm = (column: number): Form => ({ at: zero, terms: new Map([[column, one]]) });
export const isFixed = ({ terms }: Form): boolean => terms.size === 0;

/** Every number of a form taken through one multiplication or division. */
const each = ({ at, terms }: Form, through: (x: Decimal) => Decimal): Form => ({
  at: through(at),
  terms: new Map([...terms].map(([column, factor]) => [column, through(factor)])),
});

const scaled = (form: Form, times: Decimal): Form =>
  times.isZero() ? numberForm(zero) : each(form, (x) => x.times(times));

/** `a - b` */
export const gapOf = (a: Form, b: Form): Form => added(a, scaled(b, one.neg()));

function added(a: Form, b: Form): Form {
  const terms = new Map(a.terms);
  for (const [column, factor] of b.terms) {
    const total = (terms.get(column) ?? zero).plus(factor);
    if (total.isZero()) terms.delete(column);
    else terms.set(column, total);
  }
  return { at: a.at.plus(b.at), terms };
}

/** The form of a step over forms, or `undefined` when the step is not linear; the least of equal forms is one of them. */
export function linearStep(node: Computed, parts: readonly Form[]): Form | undefined {
  const [a, b] = parts as readonly [Form, Form];
  switch (node.operation) {
    case 'sum':
      return parts.reduce(added);
    case 'difference':
      return gapOf(a, b);
    case 'relabel':
      return a;
    case 'product':
      if (isFixed(a)) return scaled(b, a.at);
      return isFixed(b) ? scaled(a, b.at) : undefined;
    case 'quotient':
      return isFixed(b) && !b.at.isZero() ? each(a, (x) => x.div(b.at)) : undefined;
    case 'convert': {
      const { times, over } = node.factor as NonNullable<Computed['factor']>;
      return each(a, (x) => x.times(times).div(over));
    }
    case 'least':
    case 'greatest':
      return parts.every((part) => formKey(part) === formKey(a)) ? a : undefined;
    default:
      return undefined;
  }
}

/** What is worked out of a form once, however often it is asked. */
const kept = <V>(make: (form: Form) => V): ((form: Form) => V) => {
  const made = new WeakMap<Form, { readonly value: V }>();
  return (form) => {
    const known = made.get(form) ?? { value: make(form) };
    made.set(form, known);
    return known.value;
  };
};

const sorted = ({ terms }: Form): readonly (readonly [number, Decimal])[] => [...terms].sort(([a], [b]) => a - b);

/** One text for one form. */
export const formKey = kept(
  (form) =>
    `${form.at.toString()} ${sorted(form)
      .map(([column, factor]) => `${factor.toString()}@${column}`)
      .join(' ')}`,
);

/** A form as it is run. */
export interface FormInDoubles {
  readonly at: number;
  readonly columns: readonly number[];
  readonly times: readonly number[];
  /** One text for all forms that are straight lines of each other, as far as doubles tell: their factors over the first one. */
  readonly direction: string;
}

/** Digits at which two factors count as one: what doubles lose is far inside of every band. */
const digits = 14;

export const inDoubles = kept((form): FormInDoubles => {
  const terms = sorted(form);
  const times = terms.map(([, factor]) => factor.toNumber());
  const columns = terms.map(([column]) => column);
  const [first = 1] = times;
  const direction = times.map((factor, k) => `${(factor / first).toPrecision(digits)}@${columns[k]}`).join(' ');
  return { at: form.at.toNumber(), columns, times, direction };
});
