/** Why a row has no answer, in one short text that all rows refused in the same way share. */
import type { StudyFailure } from '../errors.js';

/** The tag of an error and the place it names, without its figures. */
export function reasonOf(error: StudyFailure): string {
  const place = error.tag === 'MissingFact' ? error.question : error.path;
  return place === undefined ? error.tag : `${error.tag}: ${place}`;
}
