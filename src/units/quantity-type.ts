/** The type of a figure: a brand that only this library can give, so that no record of the caller passes for one. */
import type { Branded } from 'io-ts';
import type { Decimal } from './decimal.js';
import type { Unit } from './unit-list.js';

interface QuantityBrand {
  readonly Quantity: unique symbol;
}

interface Plain<U extends Unit> {
  readonly unit: U;
  readonly value: Decimal;
}

/**
 * A figure: its `unit` and its `value`, a decimal of 34 digits that is worked out when it is first read. Only this library's
 * functions can make one, and nothing can change one. Two figures are compared by `compare`, or by `sameFigure`, digit for digit.
 */
export type Quantity<U extends Unit> = Branded<Plain<U>, QuantityBrand>;
