/** A spec assessed once, with every comparison that was asked: what the rows of its branch are answered by. */

import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson } from '../../assessment/index.js';
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

/** Assesses a spec as it was written and records the branch that it takes. */
export function recordingOf(spec: unknown, inputs: Inputs, measure: Measure): Recording {
  const leaves = readLeaves(spec);
  return isLeft(leaves)
    ? { kind: 'unreadable', error: leaves.left }
    : recordingOfRow(asRowsHaveIt(spec, leaves.right, inputs), inputs, measure).recording;
}

/** A recording, and what `assess` said of the spec it was made from. */
export interface RecordedRow {
  readonly recording: Recording;
  readonly outcome: Either<AssessError, Assessment>;
}

/** Assesses the spec of a row and records the branch that it takes. */
export function recordingOfRow(spec: unknown, inputs: Inputs, measure: Measure): RecordedRow {
  const { result: outcome, decisions } = recordingDecisions(() => assessJson(spec));
  if (!isLeft(outcome)) return { recording: alternativeOf(outcome.right, decisions, inputs, measure), outcome };
  const leaves = readLeaves(spec);
  if (isLeft(leaves)) return { recording: { kind: 'unreadable', error: leaves.left }, outcome };
  const error = outcome.left;
  const branch = branchOf(leaves.right, inputs, decisions);
  return { recording: { kind: 'refused', ...branch, reason: reasonOf(error), error }, outcome };
}
