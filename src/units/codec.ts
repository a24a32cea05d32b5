/** Figures on the wire: `{"value":"7000.5","unit":"lb"}`, text for the digits, so that no digit is lost on the way. */

import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { isFiniteDecimal } from './decimal.js';
import { ofDecimal } from './figure.js';
import { type Quantity, quantity } from './quantity.js';
import { parseAny } from './read.js';
import { show } from './show.js';
import { type Dimension, dimensionOf, isUnit, type Unit, type UnitOf } from './unit-list.js';

/** The wire record: plain data, for errors and for answers that are sent. */
export interface WireQuantity<U extends Unit = Unit> {
  /** The digits, every one. */
  readonly value: string;
  /** The unit. */
  readonly unit: U;
}

/** A figure as its wire record. @example toWire(lb('7000.5')).value // 7000.5 */
export const toWire = <U extends Unit>({ value, unit }: Quantity<U>): WireQuantity<U> => ({
  value: value.toFixed(),
  unit,
});

/** The figure of a wire record that this library made. @throws RangeError for digits that are none @example show(fromWire(toWire(lb('7000.5')))) // 7,000.5 lb */
export const fromWire = <U extends Unit>({ value, unit }: WireQuantity<U>): Quantity<U> => quantity(value, unit);

/** A wire record that this library made, in print. @example showWire(toWire(lb(10000))) // 10,000 lb */
export const showWire = ({ value, unit }: WireQuantity): string => show(quantity(value, unit));

const isQuantity = (input: unknown): input is Quantity<Unit> =>
  typeof input === 'object' &&
  input !== null &&
  'value' in input &&
  'unit' in input &&
  isFiniteDecimal(input.value) &&
  typeof input.unit === 'string' &&
  isUnit(input.unit);

function readWire(input: unknown): Quantity<Unit> | undefined {
  if (isQuantity(input)) return quantity(input.value, input.unit);
  if (typeof input !== 'object' || input === null) return undefined;
  const { value, unit } = input as Record<string, unknown>;
  if (typeof value !== 'string' || typeof unit !== 'string' || !isUnit(unit)) return undefined;
  const digits = parseAny(`${value} ${unit}`);
  return isLeft(digits) ? undefined : (ofDecimal(digits.right.value, unit) as Quantity<Unit>);
}

/** The wire record of one dimension. @example JSON.stringify(wireQuantity('mass').encode(lb('7000.5'))) // {"value":"7000.5","unit":"lb"} */
export function wireQuantity<D extends Dimension>(dimension: D): t.Type<Quantity<UnitOf<D>>, WireQuantity, unknown> {
  return new t.Type(
    `quantity of ${dimension}`,
    (input): input is Quantity<UnitOf<D>> => isQuantity(input) && dimensionOf(input.unit) === dimension,
    (input, context) => {
      const read = readWire(input);
      return read !== undefined && dimensionOf(read.unit) === dimension
        ? t.success(read as Quantity<UnitOf<D>>)
        : t.failure(input, context, `needs {"value": digits as text, "unit": a unit of ${dimension}}`);
    },
    (q) => ({ value: (q as Quantity<Unit>).value.toFixed(), unit: (q as Quantity<Unit>).unit }),
  );
}
