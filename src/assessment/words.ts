/** The words for what can go wrong with a spec. */
import type { Words } from '../units/index.js';
import type { AssessmentError } from './errors.js';

export function wordsForAssessment(error: AssessmentError): Words {
  switch (error.tag) {
    case 'MalformedJson':
      return { asked: 'a spec', found: error.says, needed: 'a text in JSON' };
    case 'UndecodableSpec': {
      const [first, ...others] = error.problems;
      const more = others.length === 0 ? '' : `; and ${others.map(({ path, needed }) => `${path} needs ${needed}`).join('; ')}`;
      return { asked: 'a spec that can be read', found: first?.got ?? 'nothing', needed: `${first?.needed ?? 'a spec'}${more}` };
    }
    case 'MissingFact':
      return { asked: error.question, found: `no ${error.missing}`, needed: error.missing };
  }
}
