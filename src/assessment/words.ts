/** The words for whatever an assessment can be refused for. */
import { wordsForAxles } from '../axles/words.js';
import { wordsForLoad } from '../load/words.js';
import { wordsForMembers } from '../members/words.js';
import { wordsForRules } from '../rules/words.js';
import { wordsForSpec } from '../spec/words.js';
import { wordsForTires } from '../tires/words.js';
import { wordsForTowing } from '../towing/words.js';
import { wordsForTrace } from '../trace/words.js';
import { mustBe } from '../units/index.js';
import { wordsForUnits } from '../units/words.js';
import type { AssessError, AssessmentError } from './errors.js';

export function wordsForAssessment(error: AssessmentError): string {
  switch (error.tag) {
    case 'MissingFact':
      return `${error.question}: no ${error.missing} is given`;
    case 'NotAnAnswer':
      return mustBe('this part of the answer', error.found, error.needed);
    case 'OtherAnswerVersion':
      return `the answer is of version ${error.found} of its format; this library reads version ${error.known}`;
  }
}

/** Why a spec was refused, in one sentence, without the path. */
export function sentenceFor(error: AssessError): string {
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
  }
}

/** The same with the path in front, where there is one. */
export const refusalText = (error: AssessError): string =>
  `${error.path === undefined ? '' : `${error.path}: `}${sentenceFor(error)}`;
