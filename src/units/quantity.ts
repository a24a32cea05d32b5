/**
 * A figure with its unit. The unit is part of the type, so pounds plus feet does not compile and a bare number is not a
 * weight.
 */
import type { Branded } from 'io-ts';
import { type Decimal, decimalOf } from './decimal.js';
import type { Unit } from './unit-list.js';

interface QuantityBrand {
  readonly Quantity: unique symbol;
}

interface Plain<U extends Unit> {
  readonly unit: U;
  readonly value: Decimal;
}

/** A frozen record `{ unit, value }` that only this library's functions can make. */
export type Quantity<U extends Unit> = Branded<Plain<U>, QuantityBrand>;

/** What a constructor reads: a number by its shortest printed decimal, or text by its digits. */
export type Digits = number | string | Decimal;

/**
 * A figure in a unit chosen by name. The named constructors (`lb`, `inch`, ...) are this with the unit filled in.
 *
 * @throws RangeError when the digits are not a finite number: a slip of the programmer. Text from people goes through
 * `parseQuantity`, which never throws.
 */
export function quantity<U extends Unit>(digits: Digits, unit: U): Quantity<U> {
  return ofDecimal(decimalOf(digits), unit);
}

/** For values that are already decimals of this library. */
export function ofDecimal<U extends Unit>(value: Decimal, unit: U): Quantity<U> {
  return Object.freeze({ unit, value }) as Quantity<U>;
}

const constructor = <U extends Unit>(unit: U) => (digits: Digits): Quantity<U> => quantity(digits, unit);

/** Pounds as weighed: ratings, scale tickets, statics of loading. @example lb(9200), lb('7000.5') */
export const lb = constructor('lb');
/** Kilograms. @example kg(1150) */
export const kg = constructor('kg');
/** Tonnes of 1,000 kg. */
export const tonne = constructor('t');
/** Pounds of force: beams and stresses. A weight becomes one only through `weightToForce`. */
export const lbf = constructor('lbf');
/** Inches. @example inch('66.5') */
export const inch = constructor('in');
/** Feet. @example foot(20) */
export const foot = constructor('ft');
/** Millimetres. */
export const mm = constructor('mm');
/** Metres. */
export const metre = constructor('m');
/** Pounds per square inch. */
export const psi = constructor('psi');
/** Thousands of pounds per square inch. */
export const ksi = constructor('ksi');
/** Kilopascals. */
export const kPa = constructor('kPa');
/** Miles per hour. */
export const mph = constructor('mph');
/** Kilometres per hour. */
export const kmh = constructor('km/h');
/** Pounds per running foot of a member. */
export const lbPerFt = constructor('lb/ft');
/** Pounds per square foot of plate or deck. */
export const lbPerFt2 = constructor('lb/ft2');
/** Pounds per cubic foot. */
export const lbPerFt3 = constructor('lb/ft3');
/** Square inches. */
export const inch2 = constructor('in2');
/** Square feet. */
export const foot2 = constructor('ft2');
/** Cubic inches: a section modulus. */
export const inch3 = constructor('in3');
/** Inches to the fourth power: a second moment of area. */
export const inch4 = constructor('in4');
/** Pounds of force per running foot. */
export const lbfPerFt = constructor('lbf/ft');
/** A plain number: a share of one. */
export const ratio = constructor('ratio');
/** Percent. `percent(12)` and `ratio('0.12')` are the same share in two units. */
export const percent = constructor('%');
/** Degrees of angle. */
export const degree = constructor('deg');
/** Shares of standard gravity. */
export const gravity = constructor('g');
