/**
 * The one place that imports decimal.js.
 *
 * A private clone with fixed settings: 34 significant digits, half even. Nobody's `Decimal.set` can reach it, and it
 * reaches nobody's. Its own settings cannot be changed either: every decimal returned names it as its constructor.
 */
import { Decimal as Base } from 'decimal.js';

export type Decimal = Base;
const settings = { defaults: true, precision: 34, rounding: Base.ROUND_HALF_EVEN };
export const Decimal = Base.clone(settings);
Object.freeze(Decimal);

/** Powers and angles raise the precision for a moment: they are worked out in a clone that is never returned. */
const Open = Base.clone(settings);

type OfOne = 'acos' | 'asin' | 'atan' | 'cos' | 'ln' | 'sin' | 'tan';

/** A function of one decimal, to 34 digits. */
export const workedOut = (name: OfOne, of: Decimal): Decimal => new Decimal(new Open(of)[name]());

/** One decimal to the power of another, to 34 digits. */
export const powerOf = (base: Decimal, exponent: Decimal): Decimal => new Decimal(new Open(base).pow(exponent));

/** A decimal whose digits nobody can change; arithmetic makes new ones. */
export function frozenDecimal(value: Decimal): Decimal {
  Object.freeze(value.d);
  return Object.freeze(value);
}

export const zero: Decimal = frozenDecimal(new Decimal(0));
export const one: Decimal = frozenDecimal(new Decimal(1));

/** -1, 0 or 1; a zero has no sign here. (`s` is the sign of a decimal, `e` its power of ten, `d` its digits in groups of seven.) */
export function signOf(figure: Decimal): -1 | 0 | 1 {
  if (figure.d[0] === 0) return 0;
  return figure.s > 0 ? 1 : -1;
}

/** Reads a number by its shortest printed decimal, text by its digits, and a Decimal of any copy of the library. */
export function decimalOf(value: number | string | Decimal): Decimal {
  const read = tryDecimal(Base.isDecimal(value) ? value.toString() : value);
  if (!read.isFinite()) throw new RangeError(`not a finite number: ${String(value).slice(0, 60)}`);
  return read;
}

function tryDecimal(value: number | string): Decimal {
  try {
    return new Decimal(value);
  } catch {
    return new Decimal(NaN);
  }
}

/** A finite Decimal of any copy of the library. Plain data may carry the tag that `isDecimal` asks for; only a prototype counts. */
export const isFiniteDecimal = (value: unknown): value is Decimal =>
  Base.isDecimal(value) && !Object.hasOwn(value, 'toStringTag') && value.isFinite();
