/** The figures of a study: every one that some alternative measures. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { StudyFailure } from '../errors.js';
import type { Tapes } from './tapes.js';

/** Name and unit of every figure, in the order they are first met; Left when no alternative has an answer. */
export function figureNames(tapes: Tapes): Either<StudyFailure, readonly { name: string; unit: string }[]> {
  const alternatives = tapes.all();
  const units = new Map<string, string>();
  for (const alternative of alternatives)
    if (!isLeft(alternative))
      for (const { name, node } of alternative.right.figures) if (!units.has(name)) units.set(name, node.value.unit);
  const failed = alternatives.find(isLeft);
  if (units.size === 0 && failed !== undefined) return left(failed.left);
  return right([...units].map(([name, unit]) => ({ name, unit })));
}
