/** From a JSON value to a plain answer, or the first place where it is none. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { inShort, isRecord } from '../../units/internal.js';
import type { NotAnAnswer, OtherAnswerVersion } from '../errors.js';
import { answerForm } from './form.js';
import { type Answer, answerFormat, answerVersion } from './shape.js';

/** Reads the form only; whether the figures follow from each other is another question. */
export function readAnswer(json: unknown): Either<NotAnAnswer | OtherAnswerVersion, Answer> {
  const refuse = (path: string, found: string, needed: string) =>
    left({ chapter: 'assessment', tag: 'NotAnAnswer', path, found, needed } as const);
  if (!isRecord(json)) return refuse('the answer', inShort(json), 'a record, as JSON gives it');
  if (json.format !== answerFormat) return refuse('format', inShort(json.format), `"${answerFormat}"`);
  if (json.version !== answerVersion)
    return left({
      chapter: 'assessment',
      tag: 'OtherAnswerVersion',
      path: 'version',
      found: inShort(json.version),
      known: answerVersion,
    });
  const misfit = answerForm(json, '');
  return misfit === undefined ? right(json as unknown as Answer) : refuse(misfit.path, misfit.found, misfit.needed);
}
