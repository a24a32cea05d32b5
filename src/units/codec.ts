/** Figures on the wire: `{"value":"7000.5","unit":"lb"}`, text for the digits, so that no digit is lost on the way. */

import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { isFiniteDecimal } from './decimal.js';
import { ofDecimal, type Quantity, quantity } from './quantity.js';
import { parseAny } from './read.js';
import { type Dimension, dimensionOf, isUnit, type Unit, type UnitOf } from './unit-list.js';

/** The wire record. */
export interface WireQuantity {
  readonly value: string;
  readonly unit: Unit;
}

const isQuantity = (input: unknown): input is Quantity<Unit> =>
  typeof input === 'object' &&
  input !== null &&
  'value' in input &&
  'unit' in input &&
  isFiniteDecimal(input.value) &&
  typeof input.unit === 'string' &&
  isUnit(input.unit);

function fromWire(input: unknown): Quantity<Unit> | undefined {
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
      const read = fromWire(input);
      return read !== undefined && dimensionOf(read.unit) === dimension
        ? t.success(read as Quantity<UnitOf<D>>)
        : t.failure(input, context, `needs {"value": digits as text, "unit": a unit of ${dimension}}`);
    },
    (q) => ({ value: (q as Quantity<Unit>).value.toFixed(), unit: (q as Quantity<Unit>).unit }),
  );
}
