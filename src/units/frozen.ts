/** Deep freeze for values shared by all answers, so that no caller can change them for the next one. */
import { Decimal, frozenDecimal } from './decimal.js';

/** Freezes a value made of plain records, lists and figures, and gives it back. What is frozen already is not gone through again. */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  if (Decimal.isDecimal(value)) {
    frozenDecimal(value);
    return value;
  }
  Object.freeze(value);
  for (const inside of Object.values(value)) frozen(inside);
  return value;
}
