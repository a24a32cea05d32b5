/** The words for what can go wrong with a spec. */
import { mustBe } from '../units/index.js';
import type { Problem, SpecError } from './errors.js';

/** How many further places the words name; the data has them all. */
const mostTold = 8;

/** One fault in one sentence, without its path: for the field of a form. @example wordsForProblem({ path: 'trailer.gvwr', fault: 'no unit', got: '"9990"', needed: 'the unit, e.g. "9,990 lb"' }) // "9990" has no unit; write the unit, e.g. "9,990 lb" */
export function wordsForProblem({ fault, got, needed }: Problem): string {
  switch (fault) {
    case 'missing':
      return `this is missing; write ${needed}`;
    case 'unknown key':
      return `there is no key ${got} here; write ${needed}`;
    case 'misplaced key':
      return `the key ${got} does not belong here; it belongs to ${needed}`;
    case 'no unit':
      return `${got} has no unit; write ${needed}`;
    case 'unreadable':
    case 'wrong kind':
      return `${got} cannot be read here; write ${needed}`;
    case 'out of range':
      return `${got} is out of range; write ${needed}`;
    case 'too many':
      return `${got} is too long; write ${needed}`;
    case 'contradiction':
      return mustBe('this', got, needed);
    case 'refused':
      return needed;
  }
}

export function wordsForSpec(error: SpecError): string {
  if (error.tag === 'MalformedJson') return `the text is not JSON: ${error.says}; write a text in JSON`;
  const [first, ...others] = error.problems;
  if (first === undefined) return 'the spec cannot be read; write a spec';
  const told = others.slice(0, mostTold).map((problem) => `; ${problem.path}: ${wordsForProblem(problem)}`);
  const more = others.length > mostTold ? `; and ${others.length - mostTold} more` : '';
  return `${wordsForProblem(first)}${told.join('')}${more}`;
}
