/** A spec assessed once, with every comparison that was asked: what the rows of its branch are answered by. */

import { isLeft } from 'fp-ts/lib/Either.js';
import { assessJson } from '../../assessment/index.js';
import { type Given, recordingDecisions } from '../../trace/index.js';
import type { StudyFailure } from '../errors.js';
import { readLeaves } from '../plan/read-leaves.js';
import { changed } from '../plan/spec-paths.js';
import { type Alternative, alternativeOf } from './alternative.js';
import { type Branch, branchOf, type Inputs } from './branch.js';
import type { Measure } from './measure.js';
import { reasonOf } from './reason.js';

/** A branch whose rows `assess` refuses. The error of a row is made when it is read; all of them have this reason. */
export interface Refusal extends Branch {
  readonly kind: 'refused';
  readonly reason: string;
  /** The error of the recorded spec. */
  readonly error: StudyFailure;
}

/** A spec that cannot be read has no figures, and so no branch. */
export interface Unreadable {
  readonly kind: 'unreadable';
  readonly error: StudyFailure;
}

export type Recording = Alternative | Refusal | Unreadable;

/** The varied figures of a spec as records and not as texts, as the spec of every row has them. */
function asRowsHaveIt(spec: unknown, leaves: ReadonlyMap<string, Given>, { paths }: Inputs): unknown {
  const records = paths.flatMap((path) => {
    const leaf = leaves.get(path);
    if (leaf === undefined) return [];
    const { value, basis } = leaf;
    return [[path, { value: value.value.toFixed(), unit: value.unit, basis }] as const];
  });
  return changed(spec, Object.fromEntries(records));
}

/** Assesses a spec and records the branch that it takes. */
export function recordingOf(spec: unknown, inputs: Inputs, measure: Measure): Recording {
  const leaves = readLeaves(spec);
  if (isLeft(leaves)) return { kind: 'unreadable', error: leaves.left };
  const { result, decisions } = recordingDecisions(() => assessJson(asRowsHaveIt(spec, leaves.right, inputs)));
  if (!isLeft(result)) return alternativeOf(result.right, decisions, inputs, measure);
  const error = result.left;
  return { kind: 'refused', ...branchOf(leaves.right, inputs, decisions), reason: reasonOf(error), error };
}
