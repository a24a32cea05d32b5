/**
 * A figure with its unit. The unit is part of the type, so pounds plus feet does not compile and a bare number is not a
 * weight.
 */
import { type Decimal, decimalOf } from './decimal.js';
import { ofDecimal, ofDigits, ofNumber } from './figure.js';
import type { Quantity } from './quantity-type.js';
import type { Unit } from './unit-list.js';

export { ofDecimal } from './figure.js';
export type { Quantity } from './quantity-type.js';

/** What a constructor reads: a number by its shortest printed decimal, or text by its digits. */
export type Digits = number | string | Decimal;

/**
 * A figure in a unit chosen by name. The named constructors (`lb`, `inch`, ...) are this with the unit filled in.
 *
 * @throws RangeError when the digits are not a finite number: a programming error. Text from people goes through
 * `parseQuantity`, which never throws.
 * @example show(quantity('8.33', 'lb/gal')) // 8.33 lb/gal
 */
export function quantity<U extends Unit>(digits: Digits, unit: U): Quantity<U> {
  if (typeof digits === 'number' && Number.isFinite(digits)) return smallCount(digits, unit) ?? ofNumber(digits, unit);
  if (typeof digits !== 'string' || !plainDigits.test(digits)) return ofDecimal(decimalOf(digits), unit);
  return ofDigits(digits, unit);
}

/** Text that a double and a decimal read alike. */
const plainDigits = /^-?\d{1,40}(?:\.\d{1,40})?$/;

const counts = new Map<Unit, Quantity<Unit>[]>();

/** The whole numbers that formulas and comparisons are made of are made once. */
function smallCount<U extends Unit>(n: number, unit: U): Quantity<U> | undefined {
  if (!(n > 0 && n <= 100 && Number.isInteger(n))) return undefined;
  const row = counts.get(unit) ?? [];
  const made = row[n] ?? ofNumber(n, unit);
  if (row.length === 0) counts.set(unit, row);
  row[n] = made;
  return made as Quantity<U>;
}

const inUnitOf =
  <U extends Unit>(unit: U) =>
  (digits: Digits): Quantity<U> =>
    quantity(digits, unit);

/** Pounds as weighed: ratings, scale tickets, statics of loading. @example lb(9200), lb('7000.5') */
export const lb = inUnitOf('lb');
/** Kilograms. @example kg(1150) */
export const kg = inUnitOf('kg');
/** Tonnes of 1,000 kg. @example show(convert(tonne(1), 'kg')) // 1,000 kg */
export const tonne = inUnitOf('t');
/** Pounds of force: beams and stresses. A weight becomes one only through `weightToForce`. @example show(lbf(9200)) // 9,200 lbf */
export const lbf = inUnitOf('lbf');
/** Inches. @example inch('66.5') */
export const inch = inUnitOf('in');
/** Feet. @example foot(20) */
export const foot = inUnitOf('ft');
/** Millimetres. @example show(convert(mm(254), 'in')) // 10 in */
export const mm = inUnitOf('mm');
/** Metres. @example show(metre('2.6')) // 2.6 m */
export const metre = inUnitOf('m');
/** Pounds per square inch. @example show(psi(65)) // 65 psi */
export const psi = inUnitOf('psi');
/** Thousands of pounds per square inch. @example show(convert(ksi(50), 'psi')) // 50,000 psi */
export const ksi = inUnitOf('ksi');
/** Kilopascals. @example show(kPa(450)) // 450 kPa */
export const kPa = inUnitOf('kPa');
/** Miles per hour. @example show(mph(65)) // 65 mph */
export const mph = inUnitOf('mph');
/** Kilometres per hour. @example show(convert(mph(50), 'km/h')) // 80.4672 km/h */
export const kmh = inUnitOf('km/h');
/** Pounds per running foot of a member. @example show(lbPerFt('6.7')) // 6.7 lb/ft */
export const lbPerFt = inUnitOf('lb/ft');
/** A spring rate, pounds per inch of travel. @example show(lbPerInch(2200)) // 2,200 lb/in */
export const lbPerInch = inUnitOf('lb/in');
/** Pounds per square foot of plate or deck. @example show(multiply(lbPerFt2('10.2'), foot2(2))) // 20.4 lb */
export const lbPerFt2 = inUnitOf('lb/ft2');
/** Pounds per cubic foot. @example show(lbPerFt3(490)) // 490 lb/ft3 */
export const lbPerFt3 = inUnitOf('lb/ft3');
/** Square inches. @example show(multiply(inch(3), inch('0.25'))) // 0.75 in2 */
export const inch2 = inUnitOf('in2');
/** Square feet. @example show(foot2(140)) // 140 ft2 */
export const foot2 = inUnitOf('ft2');
/** Cubic inches: a section modulus. @example show(inch3('3.5')) // 3.5 in3 */
export const inch3 = inUnitOf('in3');
/** Inches to the fourth power: a second moment of area. @example show(inch4('8.93')) // 8.93 in4 */
export const inch4 = inUnitOf('in4');
/** Pounds of force per running foot. @example show(multiply(lbfPerFt(100), foot(20))) // 2,000 lbf */
export const lbfPerFt = inUnitOf('lbf/ft');
/** A plain number: a share of one. @example show(ratio('0.12')) // 0.12 */
export const ratio = inUnitOf('ratio');
/** Percent. `percent(12)` and `ratio('0.12')` are the same share in two units. @example show(convert(percent(12), 'ratio')) // 0.12 */
export const percent = inUnitOf('%');
/** Degrees of angle. @example show(degree(15)) // 15 deg */
export const degree = inUnitOf('deg');
/** Shares of standard gravity. @example show(convert(gravity('0.5'), 'm/s2')) // 4.903325 m/s2 */
export const gravity = inUnitOf('g');
