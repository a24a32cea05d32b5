/** The words for what can go wrong with a study. */
import type { AskedFoundNeeded } from '../units/index.js';
import type { StudyError } from './errors.js';

const inThousands = (count: number): string => count.toLocaleString('en-US');

export function wordsForStudy(error: StudyError): AskedFoundNeeded {
  switch (error.tag) {
    case 'UnknownPath':
      return {
        asked: `to vary ${error.path}`,
        found: 'no figure there',
        needed: `a path of the spec that holds a figure; the nearest are ${error.nearest.join(', ')}`,
      };
    case 'UnusableVariation':
      return { asked: `to vary ${error.path}`, found: error.found, needed: error.needed };
    case 'TooManyVariants':
      return {
        asked: `a study of ${inThousands(error.count)} variants`,
        found: 'more than a study takes on',
        needed: `at most ${inThousands(error.most)}: fewer levels, or a sampled design`,
      };
    case 'TapeMismatch':
      return {
        asked: `${error.column} of row ${error.row}`,
        found: `${error.tape} on the tape, ${error.exact} exactly`,
        needed: 'the same figure twice: a measure that picks its figures by their values, or else a defect to report',
      };
    case 'Aborted':
      return {
        asked: 'the rest of the study',
        found: `a stop after ${error.afterRows} rows`,
        needed: 'a run to the end',
      };
    case 'NoSolution':
      return {
        asked: `the ${error.path} that brings ${error.what} to zero`,
        found: error.found,
        needed: 'a figure within what this input may be',
      };
  }
}
