/** The figures of a spec by path, read before anybody asks whether they contradict each other: a study may vary one of them. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { decodeSpec, leavesOf, specCodec } from '../../spec/index.js';
import type { Given } from '../../trace/index.js';
import type { StudyFailure } from '../errors.js';

/** The leaves of a spec whose every key can be read; Left with all that is wrong with it otherwise. */
export function readLeaves(spec: unknown): Either<StudyFailure, ReadonlyMap<string, Given>> {
  const read = specCodec.decode(spec);
  if (!isLeft(read)) return right(leavesOf(read.right));
  const told = decodeSpec(spec);
  return isLeft(told) ? told : right(leavesOf(told.right));
}
