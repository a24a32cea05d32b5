/** What a heading answers; where its figures cannot be so, its question stays open and asks attention, and the rest of the answer stands. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { note } from '../../ratings/index.js';
import type { AssessError } from '../errors.js';
import { sentenceFor } from '../words.js';
import type { OpenQuestion } from './open-questions.js';
import { open, type Part } from './part-of-answer.js';

/** A question, and the key that is reported where an error names none. */
export interface AskedAt extends Pick<OpenQuestion, 'id' | 'what' | 'piece'> {
  readonly path: string;
}

/** A figure that no table has narrows the answer; figures that cannot be so ask attention besides. */
function unanswered(error: AssessError, { path: usual, ...asked }: AskedAt): Part {
  const paths = [error.path ?? usual];
  const sentence = sentenceFor(error);
  if (error.tag === 'NotTabulated') return open({ ...asked, missing: `a printed figure (${sentence})`, paths });
  const left = open({ ...asked, missing: 'figures that agree with each other', paths });
  return { ...left, attention: [{ ...note(error.tag, `${asked.what}: ${sentence}`), paths }] };
}

/**
 * The answer of a heading, or its question left open.
 *
 * @param found what the heading answers
 * @param asked the question, in shop words
 * @param rest the heading with nothing in it but that open question
 * @returns a part, whatever was found
 */
export const answered = <A>(found: Either<AssessError, A>, asked: AskedAt, rest: (part: Part) => A): A =>
  isLeft(found) ? rest(unanswered(found.left, asked)) : found.right;
