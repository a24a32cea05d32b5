/** The words for what can go wrong with rules. */
import { mustBe, showUnit } from '../units/index.js';
import type { RulesError, UnknownName } from './errors.js';

const kinds: Readonly<Record<UnknownName['tag'], string>> = {
  UnknownFact: 'fact',
  UnknownRule: 'rule',
};

export function wordsForRules(error: RulesError): string {
  switch (error.tag) {
    case 'ContradictoryFacts':
      return `${error.facts.join(' and ')} contradict each other: ${error.found.join(' and ')}; give ${error.needed}`;
    case 'OutOfRange':
      return mustBe(error.what, error.found, error.needed);
    case 'WrongRuleUnit':
      return mustBe(error.fact, `in ${showUnit(error.found)}`, `in a unit of ${error.needed}`);
    case 'UnknownFact':
    case 'UnknownRule':
      return `there is no ${kinds[error.tag]} "${error.found}"; write one of ${error.known.join(', ')}`;
    case 'MissingFacts':
      return `${error.asked} cannot be told; give ${error.missing.join(', ')}`;
    case 'BeyondLastStep':
      return mustBe(`the weight for ${error.table}`, error.found, `within the last step, ${error.last}`);
  }
}
