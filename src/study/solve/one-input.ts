/** A spec read for solving over one of its inputs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Assessment, assessJson, axlesMovedByLevers } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import { leavesOf } from '../../spec/index.js';
import type { Unit } from '../../units/index.js';
import { type Decimal, editDistance, nearestKeys } from '../../units/internal.js';
import type { StudyFailure } from '../errors.js';
import { unusable } from '../plan/plan-refusal.js';
import { type AssessAt, assessAt, type Stretch, stretchesOf } from './stretches-of-one-input.js';

/** A spec, its assessment and the stretches of one of its inputs. */
export interface Ready {
  readonly at: AssessAt;
  readonly own: Decimal;
  readonly unit: Unit;
  readonly assessment: Assessment;
  readonly stretches: readonly Stretch[];
  /** What is to be said of moving this input: axles under a tongue load that was weighed. */
  readonly notes: readonly Note[];
}

/** The spec assessed and its input cut into stretches; Left `UnknownPath` when the path holds no figure. */
export function ready(base: unknown, path: string): Either<StudyFailure, Ready> {
  if (typeof path !== 'string') return left(unusable('path', path, 'a key of the spec, as text'));
  const assessed = assessJson(base);
  if (isLeft(assessed)) return assessed;
  const leaves = leavesOf(assessed.right.spec);
  const leaf = leaves.get(path);
  if (leaf?.between === undefined)
    return left({
      chapter: 'study',
      tag: 'UnknownPath',
      path,
      nearest: nearestKeys([...leaves.keys()], (other) => editDistance(path, other)),
    });
  const { unit, value } = leaf.value;
  const at = assessAt(base, path, unit, leaf.basis);
  const stretches = stretchesOf(at, path, ...leaf.between);
  const notes = axlesMovedByLevers(leaves, [[path]]);
  return right({ at, own: value, unit, assessment: assessed.right, stretches, notes });
}
