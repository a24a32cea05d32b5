/**
 * Decisions: a place where the program went one way because one figure stood so to another.
 *
 * A working has no branches; a program has. Whoever branches on a figure does it through `decide` and hands the decision
 * back with the result, so that a study knows for which of its variants the recorded working still speaks.
 */

import type { Unit } from '../units/index.js';
import { compareDecimals } from '../units/internal.js';
import type { Derived, Node } from './node.js';

export type Comparison = '<' | '<=' | '>' | '>=' | '=';

export interface Decision {
  readonly holds: boolean;
  readonly left: Node;
  readonly comparison: Comparison;
  readonly right: Node;
}

/** Whether a comparison holds for an order of -1, 0 or 1. @example holdsFor(0, '<=') // true */
export function holdsFor(order: -1 | 0 | 1, comparison: Comparison): boolean {
  switch (comparison) {
    case '<':
      return order < 0;
    case '<=':
      return order <= 0;
    case '>':
      return order > 0;
    case '>=':
      return order >= 0;
    case '=':
      return order === 0;
  }
}

/** Compares two figures of one unit after the snap, and keeps what was compared. @example decide(given('gross', lb(14000)), '<=', given('GVWR', lb(14000))).holds // true */
export function decide<U extends Unit>(left: Derived<U>, comparison: Comparison, right: Derived<NoInfer<U>>): Decision {
  if (left.value.unit !== right.value.unit)
    throw new TypeError(`${right.value.unit} is not ${left.value.unit}: convert it by name first`);
  const order = compareDecimals(left.value.value, right.value.value);
  return { holds: holdsFor(order, comparison), left: left.why, comparison, right: right.why };
}
