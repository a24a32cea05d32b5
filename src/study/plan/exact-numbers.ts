/** The little that a study needs of exact decimals outside the recorded steps: levels between two ends, digits of a row. */
import { Decimal } from '../../units/internal.js';

export { Decimal };

/** `from + (to - from) x i / n`, cut to twelve decimals so that a level prints as a person would write it. */
export const applyLinear = (from: Decimal, to: Decimal, i: number, n: number): Decimal =>
  from.plus(to.minus(from).times(i).div(n)).toDecimalPlaces(12);

/** The exact figure a double prints as. */
export const exactly = (x: number): Decimal => new Decimal(String(x));
