/** One branch of the program: a recorded working or a recorded refusal, and the rows for which it is valid. */
import type { Decision, Given, Node } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { type ColumnBound, tightened } from '../tape/bounds.js';
import { type Tape, tapeOf } from '../tape/tape.js';
import { variesWith } from '../tape/varies.js';
import { DecisionMemo } from './decision-memo.js';

export interface Branch {
  readonly tape: Tape;
  readonly memo: DecisionMemo;
  /** Whether a node depends on a varied input. */
  readonly varies: (node: Node) => boolean;
  /** The range of each input; empty when the spec of this branch has no such figure, or has it in another unit. */
  readonly inputBounds: readonly ColumnBound[];
  /** Those and the bounds of the decisions, one a column. */
  readonly allBounds: readonly ColumnBound[];
}

/** The varied paths and the units in which they vary. */
export interface Inputs {
  readonly paths: readonly string[];
  readonly units: readonly Unit[];
}

/** The ends of an input on its column. */
function inputBound(leaf: Given | undefined, unit: Unit | undefined, column: number): ColumnBound {
  if (leaf === undefined || leaf.value.unit !== unit) return { column, low: 1, high: 0 };
  return {
    column,
    low: leaf.between?.[0].toNumber() ?? Number.NEGATIVE_INFINITY,
    high: leaf.between?.[1].toNumber() ?? Number.POSITIVE_INFINITY,
  };
}

/** The branch on which these decisions fall out as recorded; `outputs` are the figures wanted of its rows. */
export function branchOf(
  leaves: ReadonlyMap<string, Given>,
  { paths, units }: Inputs,
  decisions: readonly Decision[],
  outputs: readonly Node[] = [],
  varies = variesWith(paths),
): Branch {
  const tape = tapeOf(outputs, paths, decisions, varies);
  const inputBounds = paths.map((path, column) => inputBound(leaves.get(path), units[column], column));
  return {
    tape,
    memo: new DecisionMemo(paths),
    varies,
    inputBounds,
    allBounds: tightened([...inputBounds, ...tape.bounds]),
  };
}
