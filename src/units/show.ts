/** Figures in print. `show` prints every digit, so `parse(show(q))` is `q`; round first when fewer are wanted. */

import { convert } from './convert.js';
import { Decimal } from './decimal.js';
import { boundOf, doubleOf } from './figure.js';
import type { Quantity } from './quantity.js';
import { roundToStep, stepsOfDouble } from './rounding.js';
import type { Unit, UnitOf } from './unit-list.js';

const grouped = (whole: string): string => (whole.length < 4 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ','));

/** Digits with commas between groups of three: `10,000`, `-1,234.5`. @example showNumber(lb('-1234.5').value) // -1,234.5 */
export function showNumber(value: Decimal): string {
  const [whole = '0', fraction] = value.abs().toFixed().split('.');
  const sign = value.isNegative() && !value.isZero() ? '-' : '';
  return `${sign}${grouped(whole)}${fraction === undefined ? '' : `.${fraction}`}`;
}

/** Every digit of an exact figure that its double prints in full; undefined for others. */
function digitsOfDouble(q: Quantity<Unit>): string | undefined {
  const size = Math.abs(doubleOf(q));
  const printsInFull = Number.isInteger(size) || (size < 1e9 && Number.isInteger(size * 32));
  if (boundOf(q) !== 0 || !printsInFull) return undefined;
  const [whole = '0', fraction] = String(size).split('.');
  return `${doubleOf(q) < 0 ? '-' : ''}${grouped(whole)}${fraction === undefined ? '' : `.${fraction}`}`;
}

/**
 * The digits rounded to so many places, taken from the double; undefined where its bound reaches over the half between two
 * figures in print. Of an exact figure below 2^40 in print the double lies exactly on the half, and rounds away from zero.
 */
function roundedDigitsOfDouble(q: Quantity<Unit>, places: number): string | undefined {
  const scale = 10 ** places;
  const steps = Math.abs(doubleOf(q)) * scale;
  if (!(steps < 2 ** 40) || places < 0 || places > 4) return undefined;
  const below = Math.floor(steps);
  const past = steps - below;
  const off = boundOf(q) === 0 ? 0 : boundOf(q) * scale * 1.001 + steps * 2.3e-16;
  if (off > 0 && Math.abs(past - 0.5) <= off) return undefined;
  const rounded = past >= 0.5 ? below + 1 : below;
  const whole = Math.floor(rounded / scale);
  const fraction = String(rounded - whole * scale)
    .padStart(places, '0')
    .replace(/0+$/, '');
  const sign = doubleOf(q) < 0 && rounded > 0 ? '-' : '';
  return `${sign}${grouped(String(whole))}${fraction === '' ? '' : `.${fraction}`}`;
}

/** The unit in print: `lb*in` is printed `lb\u00b7in`, a plain number has none. @example showUnit('lb*in') // lb·in */
export const showUnit = (unit: Unit): string => (unit === 'ratio' ? '' : unit.replaceAll('*', '\u00b7'));

/** The figure in print, every digit. @example show(lb(10000)) // 10,000 lb */
export function show<U extends Unit>(q: Quantity<U>): string {
  return `${digitsOfDouble(q) ?? showNumber(q.value)} ${showUnit(q.unit)}`.trimEnd();
}

const stepOf = (places: number): Decimal => new Decimal(10).pow(-places);

/** The figure cut to so many decimal places for reading; a trailing row of zeros is dropped. Never used in arithmetic. @example showBrief(lb('10848.4167')) // 10,848.42 lb */
export function showBrief<U extends Unit>(q: Quantity<U>, places = 2): string {
  const digits = roundedDigitsOfDouble(q, places) ?? showNumber(roundToStep(q.value, stepOf(places), 'nearest'));
  return `${digits} ${showUnit(q.unit)}`.trimEnd();
}

/**
 * Feet and inches to the nearest sixteenth (or another power of two), as a tape shows them.
 *
 * @example showFeetInches(inch('198.5')) // 16' 6 1/2"
 */
export function showFeetInches(length: Quantity<UnitOf<'length'>>, denominator: 2 | 4 | 8 | 16 | 32 | 64 = 16): string {
  const inches = convert(length as Quantity<'in'>, 'in');
  const parts = stepsOfDouble(Math.abs(doubleOf(inches)) * denominator, boundOf(inches) * denominator, 'nearest');
  if (parts === undefined) return feetInchesOfDecimal(inches.value, denominator);
  const feet = Math.floor(parts / (12 * denominator));
  const whole = Math.floor(parts / denominator) - 12 * feet;
  const sign = doubleOf(inches) < 0 && parts > 0 ? '-' : '';
  return `${sign}${feet}' ${whole}${shopFraction(parts % denominator, denominator)}"`;
}

function feetInchesOfDecimal(inches: Decimal, denominator: number): string {
  const parts = roundToStep(inches.abs(), new Decimal(1).div(denominator), 'nearest').times(denominator);
  const feet = parts.divToInt(12 * denominator);
  const left = parts.minus(feet.times(12 * denominator));
  const whole = left.divToInt(denominator);
  const top = left.minus(whole.times(denominator)).toNumber();
  const sign = inches.isNegative() && !parts.isZero() ? '-' : '';
  return `${sign}${feet.toFixed()}' ${whole.toFixed()}${shopFraction(top, denominator)}"`;
}

/** A fraction below one, reduced by halves: ` 1/2` for 8 sixteenths; empty for zero. */
function shopFraction(parts: number, denominator: number): string {
  let [top, bottom] = [parts, denominator];
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return top === 0 ? '' : ` ${top}/${bottom}`;
}
