/**
 * The one shape of every figure: its unit, a double with a bound of its error, and where its decimal comes from.
 *
 * Steps and comparisons use the double as long as the bound lets them. The decimal of 34 digits is worked out when somebody
 * reads it, and kept. All fields are private: nothing can be overwritten from outside, and no figure has to be frozen.
 */
import { Decimal, decimalOf, frozenDecimal } from './decimal.js';
import { boundOfDigits, digitsOf, nearestDouble } from './doubles.js';
import type { Quantity } from './quantity-type.js';
import type { Unit } from './unit-list.js';

/** What a decimal is made of when it is read: its digits, or a step that is recorded elsewhere. */
type Origin = string | number | object;
type Make = (origin: object) => Decimal;

class Figure {
  readonly #unit: Unit;
  readonly #double: number;
  readonly #bound: number;
  #decimal: Decimal | undefined;
  #origin: Origin | undefined;
  readonly #make: Make | undefined;

  constructor(
    unit: Unit,
    double: number,
    bound: number,
    decimal: Decimal | undefined,
    origin: Origin | undefined,
    make: Make | undefined,
  ) {
    this.#unit = unit;
    this.#double = double;
    this.#bound = bound;
    this.#decimal = decimal;
    this.#origin = origin;
    this.#make = make;
  }

  get unit(): Unit {
    return this.#unit;
  }

  get value(): Decimal {
    if (this.#decimal !== undefined) return this.#decimal;
    const made = this.#make === undefined ? new Decimal(this.#origin as string) : this.#make(this.#origin as object);
    this.#decimal = frozenDecimal(made);
    this.#origin = undefined;
    return made;
  }

  /** On the wire a figure is its digits as text, and its unit. */
  toJSON(): { readonly value: string; readonly unit: Unit } {
    return { value: this.value.toFixed(), unit: this.#unit };
  }

  /** Test runners compare by what is iterated; by its fields, which are private, every figure would equal every other. */
  [Symbol.iterator](): Iterator<string> {
    return [this.value.toFixed(), this.#unit].values();
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return `${this.value.toFixed()} ${this.#unit}`;
  }

  /** Of a figure of this copy of the library; one of another copy (the other module format) is taken over by its digits. */
  static doubleOf(figure: object): number {
    return #double in figure ? figure.#double : foreign(figure as Quantity<Unit>).#double;
  }

  static boundOf(figure: object): number {
    return #bound in figure ? figure.#bound : foreign(figure as Quantity<Unit>).#bound;
  }

  static openStep(figure: object, make: Make): object | undefined {
    return #double in figure && figure.#decimal === undefined && figure.#make === make
      ? (figure.#origin as object)
      : undefined;
  }

  static begin(figure: object, step: object): void {
    (figure as Figure).#origin = step;
  }

  static keep(figure: object, decimal: Decimal): void {
    (figure as Figure).#decimal = frozenDecimal(decimal);
    (figure as Figure).#origin = undefined;
  }

  static is(value: object): value is Figure {
    return #double in value;
  }
}

function foreign(figure: Quantity<Unit>): Figure {
  return fromDecimal(decimalOf(figure.value), figure.unit);
}

function fromDecimal(value: Decimal, unit: Unit): Figure {
  if (!value.isFinite()) return new Figure(unit, value.toNumber(), Infinity, value, undefined, undefined);
  const double = nearestDouble(value);
  const bound = boundOfDigits(double, digitsOf(value));
  return new Figure(unit, double, bound, frozenDecimal(value), undefined, undefined);
}

const asQuantity = <U extends Unit>(figure: Figure): Quantity<U> => figure as unknown as Quantity<U>;

/** For values that are already decimals of this library. @example show(ofDecimal(lb(9200).value, 'lbf')) // 9,200 lbf */
export const ofDecimal = <U extends Unit>(value: Decimal, unit: U): Quantity<U> => asQuantity(fromDecimal(value, unit));

/** A finite number, by its shortest printed decimal. */
export const ofNumber = <U extends Unit>(value: number, unit: U): Quantity<U> =>
  asQuantity(new Figure(unit, value, boundOfDigits(value, value === 0 ? 0 : 15), undefined, value, undefined));

/** Plain digits with at most a sign and a point. */
export function ofDigits<U extends Unit>(text: string, unit: U): Quantity<U> {
  const double = Number(text);
  if (double === 0) return ofDecimal(new Decimal(text), unit);
  return asQuantity(new Figure(unit, double, boundOfDigits(double, text.length), undefined, text, undefined));
}

/** A figure whose decimal `make` works out from a step when somebody reads it; `begin` says which. */
export const laterFrom = <U extends Unit>(unit: U, double: number, bound: number, make: Make): Quantity<U> =>
  asQuantity(new Figure(unit, double, bound, undefined, undefined, make));

/** The double of a figure, as far from its decimal as `boundOf` says at most. */
export const doubleOf = (figure: Quantity<Unit>): number => Figure.doubleOf(figure);
export const boundOf = (figure: Quantity<Unit>): number => Figure.boundOf(figure);
/** The step that a decimal is still to be made from by `make`; undefined once it is made, and for other figures. */
export const openStep = (figure: Quantity<Unit>, make: Make): object | undefined => Figure.openStep(figure, make);
/** Tells a figure of `laterFrom` the step its decimal is made from. */
export const begin = (figure: Quantity<Unit>, step: object): void => Figure.begin(figure, step);
/** Keeps a decimal that was made for a figure on the way to another. */
export const keep = (figure: Quantity<Unit>, decimal: Decimal): void => Figure.keep(figure, decimal);

/** Whether something is a figure of this copy of the library. */
export const isFigure = (value: unknown): value is Quantity<Unit> =>
  typeof value === 'object' && value !== null && Figure.is(value);
