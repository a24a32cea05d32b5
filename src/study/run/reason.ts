/** Why a row has no answer, in one short text that all rows refused in the same way share. */
import type { StudyFailure } from '../errors.js';

/** The tag of an error, or of the first fault of a spec, and the place it names; without its figures. */
export function reasonOf(error: StudyFailure): string {
  const tag = error.tag === 'UndecodableSpec' ? (error.problems[0]?.fault ?? error.tag) : error.tag;
  const place = error.tag === 'MissingFact' ? error.question : error.path;
  return place === undefined ? tag : `${tag}: ${place}`;
}
