/**
 * Decisions: recorded comparisons on which the code branched.
 *
 * A working has no branches; a program has. Whoever branches on a figure does it through `decide` and hands the decision
 * back with the result, so a study can tell for which variants the recorded calculation is still valid.
 */

import type { Unit } from '../units/index.js';
import { compareFigures } from '../units/internal.js';
import type { Derived, Node } from './node.js';

export type Comparison = '<' | '<=' | '>' | '>=' | '=';

export interface Decision {
  readonly holds: boolean;
  readonly left: Node;
  readonly comparison: Comparison;
  readonly right: Node;
  /** Set when only a remark depends on it: no figure and no check changes with its outcome. */
  readonly settles?: 'a remark';
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

/** The list that `decide` adds to while `recordingDecisions` runs. */
let recording: Decision[] | undefined;

/** What a function gave, and every comparison that was asked while it ran, in order. */
export interface RecordedRun<A> {
  readonly result: A;
  readonly decisions: readonly Decision[];
}

/**
 * Every comparison asked while a function runs, of an answer and of a refusal alike.
 *
 * A refusal has no place for the decisions that led to it; a study needs them, to know for which rows it is refused too.
 *
 * @param run a synchronous function
 * @returns what it gave, and the decisions in the order in which they were asked; those of an inner recording are in the outer one too
 * @example recordingDecisions(() => decide(given('gross', lb(14000)), '<=', given('GVWR', lb(14000))).holds).decisions.length // 1
 */
export function recordingDecisions<A>(run: () => A): RecordedRun<A> {
  const outer = recording;
  const decisions: Decision[] = [];
  recording = decisions;
  try {
    return { result: run(), decisions };
  } finally {
    recording = outer;
    if (outer !== undefined) for (const decision of decisions) outer.push(decision);
  }
}

/** Compares two figures of one unit after the snap, and keeps what was compared; `settles` when only a remark hangs on it. @example decide(given('gross', lb(14000)), '<=', given('GVWR', lb(14000))).holds // true */
export function decide<U extends Unit>(
  left: Derived<U>,
  comparison: Comparison,
  right: Derived<NoInfer<U>>,
  settles?: Decision['settles'],
): Decision {
  if (left.value.unit !== right.value.unit)
    throw new TypeError(`${right.value.unit} is not ${left.value.unit}: convert it by name first`);
  const order = compareFigures(left.value, right.value);
  const holds = holdsFor(order, comparison);
  const decision: Decision =
    settles === undefined
      ? { holds, left: left.why, comparison, right: right.why }
      : { holds, left: left.why, comparison, right: right.why, settles };
  recording?.push(decision);
  return decision;
}
