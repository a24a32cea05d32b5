/** The figures of a study: every one that some alternative measures. */

import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { StudyFailure } from '../errors.js';
import type { Recording } from './recording.js';

export interface NamedFigure {
  readonly name: string;
  readonly unit: string;
}

/**
 * Name and unit of every figure, in the order they are first met.
 *
 * @param alternatives every alternative with the spec's own figures
 * @param rows recordings of single rows, made one by one: used only where no alternative has an answer at the spec's own figures
 * @returns Left with the error of the first alternative when none of them has an answer
 */
export function figureNames(
  alternatives: readonly Recording[],
  rows: Iterable<Recording>,
): Either<StudyFailure, readonly NamedFigure[]> {
  const units = new Map<string, string>();
  let error: StudyFailure | undefined;
  const take = (recording: Recording): void => {
    if (recording.kind !== 'answered') error ??= recording.error;
    else for (const { name, node } of recording.figures) if (!units.has(name)) units.set(name, node.value.unit);
  };
  for (const alternative of alternatives) take(alternative);
  if (units.size === 0 && error !== undefined)
    for (const row of rows) {
      take(row);
      if (units.size > 0) break;
    }
  if (units.size === 0 && error !== undefined) return left(error);
  return right([...units].map(([name, unit]) => ({ name, unit })));
}
