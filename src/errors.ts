/**
 * Every chapter's errors in one union, and the one function that puts them into words.
 *
 * @module errors
 */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { AssessError } from './assessment/errors.js';
import { sentenceFor } from './assessment/words.js';
import type { ChooseError } from './choose/errors.js';
import { wordsForChoose } from './choose/words.js';
import type { StudyError } from './study/errors.js';
import { wordsForStudy } from './study/words.js';

/** Plain data with a `chapter` and a `tag`; `path` says where in the spec, when it came from one. */
export type TrailerError = AssessError | StudyError | ChooseError;

/** What went wrong, in one sentence, without the path: for the field of a form. @example wordsFor(divisionByZero('lb', 'ft')) // the divisor of lb divided by ft is zero; it must be another figure */
export function wordsFor(error: TrailerError): string {
  switch (error.chapter) {
    case 'study':
      return wordsForStudy(error);
    case 'choose':
      return wordsForChoose(error);
    default:
      return sentenceFor(error);
  }
}

/** One line for a log or a screen: the path in the spec, when there is one, and the sentence. @example describeError(divisionByZero('lb', 'ft')) // the divisor of lb divided by ft is zero; it must be another figure */
export const describeError = (error: TrailerError): string =>
  `${error.path === undefined ? '' : `${error.path}: `}${wordsFor(error)}`;

/**
 * For scripts: the answer, or an exception with the error in words. Programs should read the Left.
 *
 * @example show(orThrow(parseQuantity('9,200 lb', 'lb'))) // 9,200 lb
 */
export function orThrow<A>(either: Either<TrailerError, A>): A {
  if (isLeft(either)) throw new Error(describeError(either.left), { cause: either.left });
  return either.right;
}
