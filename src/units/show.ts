/** Figures in print. `show` prints every digit, so `parse(show(q))` is `q`; round first when fewer are wanted. */

import { convert } from './convert.js';
import { Decimal } from './decimal.js';
import type { Quantity } from './quantity.js';
import { roundToStep } from './rounding.js';
import type { Unit, UnitOf } from './unit-list.js';

/** Digits with commas between groups of three: `10,000`, `-1,234.5`. @example showNumber(lb('-1234.5').value) // -1,234.5 */
export function showNumber(value: Decimal): string {
  const [whole = '0', fraction] = value.abs().toFixed().split('.');
  const sign = value.isNegative() && !value.isZero() ? '-' : '';
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${sign}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** The unit in print: `lb*in` is printed `lb\u00b7in`, a plain number has none. @example showUnit('lb*in') // lb·in */
export const showUnit = (unit: Unit): string => (unit === 'ratio' ? '' : unit.replaceAll('*', '\u00b7'));

/** The figure in print, every digit. @example show(lb(10000)) // 10,000 lb */
export function show<U extends Unit>(q: Quantity<U>): string {
  return `${showNumber(q.value)} ${showUnit(q.unit)}`.trimEnd();
}

/** The figure cut to so many decimal places for reading; a trailing row of zeros is dropped. Never used in arithmetic. @example showBrief(lb('10848.4167')) // 10,848.42 lb */
export function showBrief<U extends Unit>(q: Quantity<U>, places = 2): string {
  const step = new Decimal(10).pow(-places);
  return `${showNumber(roundToStep(q.value, step, 'nearest'))} ${showUnit(q.unit)}`.trimEnd();
}

/**
 * Feet and inches to the nearest sixteenth (or another power of two), as a tape shows them.
 *
 * @example showFeetInches(inch('198.5')) // 16' 6 1/2"
 */
export function showFeetInches(length: Quantity<UnitOf<'length'>>, denominator: 2 | 4 | 8 | 16 | 32 | 64 = 16): string {
  const inches = convert(length as Quantity<'in'>, 'in').value;
  const parts = roundToStep(inches.abs(), new Decimal(1).div(denominator), 'nearest').times(denominator);
  const feet = parts.divToInt(12 * denominator);
  const left = parts.minus(feet.times(12 * denominator));
  const whole = left.divToInt(denominator);
  let top = left.minus(whole.times(denominator)).toNumber();
  let bottom: number = denominator;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : ` ${top}/${bottom}`;
  const sign = inches.isNegative() && !parts.isZero() ? '-' : '';
  return `${sign}${feet.toFixed()}' ${whole.toFixed()}${fraction}"`;
}
