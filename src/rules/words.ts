/** The words for what can go wrong with rules. */
import { type AskedFoundNeeded, showUnit } from '../units/index.js';
import type { RulesError, UnknownName } from './errors.js';

const kinds: Readonly<Record<UnknownName['tag'], string>> = {
  UnknownFact: 'fact',
  UnknownRule: 'rule',
};

export function wordsForRules(error: RulesError): AskedFoundNeeded {
  switch (error.tag) {
    case 'ContradictoryFacts':
      return {
        asked: `${error.facts[0]} beside ${error.facts[1]}`,
        found: error.found.join(' beside '),
        needed: error.needed,
      };
    case 'OutOfRange':
      return { asked: error.what, found: error.found, needed: error.needed };
    case 'WrongRuleUnit':
      return {
        asked: `${error.fact} in a unit of ${error.needed}`,
        found: showUnit(error.found),
        needed: `a unit of ${error.needed}`,
      };
    case 'UnknownFact':
    case 'UnknownRule':
      return {
        asked: `the ${kinds[error.tag]} "${error.found}"`,
        found: `no such ${kinds[error.tag]}`,
        needed: `one of ${error.known.join(', ')}`,
      };
    case 'MissingFacts':
      return { asked: error.asked, found: 'facts missing', needed: error.missing.join(', ') };
    case 'BeyondLastStep':
      return {
        asked: `the step of ${error.table}`,
        found: error.found,
        needed: `a weight within the last step, ${error.last}`,
      };
  }
}
