/** The words for what can go wrong with an assessment. */
import type { AskedFoundNeeded } from '../units/index.js';
import type { AssessmentError } from './errors.js';

export const wordsForAssessment = (error: AssessmentError): AskedFoundNeeded => ({
  asked: error.question,
  found: `no ${error.missing}`,
  needed: error.missing,
});
