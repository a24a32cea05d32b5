/** The words for what can go wrong with a study. */
import { refusalText } from '../assessment/words.js';
import type { StudyError, StudyFailure } from './errors.js';

const inThousands = (count: number): string => count.toLocaleString('en-US');

export function wordsForStudy(error: StudyError): string {
  switch (error.tag) {
    case 'UnknownPath': {
      const near = error.nearest.length === 0 ? '' : `; the nearest are ${error.nearest.join(', ')}`;
      return `there is no figure here to vary${near}`;
    }
    case 'UnusableVariation':
      return `cannot use ${error.found}; give ${error.needed}`;
    case 'TooManyVariants':
      return `a study of ${inThousands(error.count)} variants is too large; ask at most ${inThousands(error.most)}, with fewer levels or a sampled design`;
    case 'TooManyRows':
      return `${inThousands(error.count)} rows do not fit in memory as columns; ask for at most ${inThousands(error.most)} at a time, or read them in chunks`;
    case 'TapeMismatch':
      return (
        `${error.column} of row ${error.row} is ${error.tape} on the tape and ${error.exact} exactly; ` +
        'either the measure picks its figures by their values, or this is a defect to report'
      );
    case 'Aborted':
      return `the study was stopped after ${error.afterRows} rows; the rest is missing`;
    case 'NoSolution':
      return `no value of this input brings ${error.what} to where it is wanted: ${error.found}`;
  }
}

/** Why a row or a study has no answer, with the path in front, where there is one. */
export const failureText = (error: StudyFailure): string => {
  if (error.chapter !== 'study') return refusalText(error);
  return `${error.path === undefined ? '' : `${error.path}: `}${wordsForStudy(error)}`;
};
