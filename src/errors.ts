/**
 * Every chapter's errors in one union, and the one function that puts them into words.
 *
 * @module errors
 */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { AssessmentError } from './assessment/errors.js';
import { wordsForAssessment } from './assessment/words.js';
import { type AxlesError, wordsForAxles } from './axles/index.js';
import { type LoadError, wordsForLoad } from './load/index.js';
import { type MembersError, wordsForMembers } from './members/index.js';
import { type RulesError, wordsForRules } from './rules/index.js';
import { type SpecError, wordsForSpec } from './spec/index.js';
import type { StudyError } from './study/errors.js';
import { wordsForStudy } from './study/words.js';
import { type TiresError, wordsForTires } from './tires/index.js';
import { type TowingError, wordsForTowing } from './towing/index.js';
import { type TraceError, wordsForTrace } from './trace/index.js';
import { type UnitsError, type Words, wordsForUnits } from './units/index.js';

/** Plain data with a `chapter` and a `tag`; `path` says where in the spec, when it came from one. */
export type TrailerError =
  | UnitsError
  | TraceError
  | TiresError
  | MembersError
  | AxlesError
  | LoadError
  | TowingError
  | RulesError
  | SpecError
  | AssessmentError
  | StudyError;

function sentence(error: TrailerError): Words {
  switch (error.chapter) {
    case 'units':
      return wordsForUnits(error);
    case 'trace':
      return wordsForTrace(error);
    case 'tires':
      return wordsForTires(error);
    case 'members':
      return wordsForMembers(error);
    case 'axles':
      return wordsForAxles(error);
    case 'load':
      return wordsForLoad(error);
    case 'towing':
      return wordsForTowing(error);
    case 'rules':
      return wordsForRules(error);
    case 'spec':
      return wordsForSpec(error);
    case 'assessment':
      return wordsForAssessment(error);
    case 'study':
      return wordsForStudy(error);
  }
}

/** What went wrong, in one sentence, without the path: for the field of a form. @example wordsFor(divisionByZero('lb', 'ft')) // asked lb divided by ft; found a divisor of zero; needed a divisor that is not zero */
export function wordsFor(error: TrailerError): string {
  const words = sentence(error);
  return typeof words === 'string' ? words : `asked ${words.asked}; found ${words.found}; needed ${words.needed}`;
}

/** One line for a log or a screen: the path in the spec, when there is one, and the sentence. @example describeError(divisionByZero('lb', 'ft')) // asked lb divided by ft; found a divisor of zero; needed a divisor that is not zero */
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
