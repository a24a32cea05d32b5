/** The words for what can go wrong with figures. */
import type { UnitsError, WrongUnit } from './errors.js';
import { showUnit } from './show.js';
import { type Dimension, dimensionOf, isUnit } from './unit-list.js';

/** One frame for most errors: `wheelbase is 0 in; it must be greater than zero`. @example mustBe('wheelbase', '0 in', 'greater than zero') // wheelbase is 0 in; it must be greater than zero */
export const mustBe = (what: string, found: string, needed: string): string =>
  `${what} is ${found}; it must be ${needed}`;

/** Short description of an unexpected JSON value, for error messages: a list or a record is not written out. */
export function inShort(found: unknown): string {
  if (found === undefined) return 'nothing';
  if (typeof found === 'object' && found !== null)
    return Array.isArray(found) ? `a list of ${found.length}` : 'a record';
  return typeof found === 'string' ? `"${found.slice(0, 60)}"` : String(found).slice(0, 60);
}

const measured = (dimension: Dimension): string => (dimension === 'mass' ? 'weight' : dimension);

/** What is to be written instead: a conversion only where there is one. */
function neededUnit({ found, needed }: WrongUnit): string {
  const dimension = isUnit(needed) ? dimensionOf(needed) : needed;
  if (dimensionOf(found) === dimension) return `the same figure in ${needed}, converted by name`;
  if (found === 'ratio') return `a unit of ${measured(dimension)} behind the figure`;
  return `a unit of ${measured(dimension)}; ${showUnit(found)} is a unit of ${measured(dimensionOf(found))}`;
}

/** What a text must say to be read, for the words of another error. */
export function neededToRead(error: UnitsError): string {
  switch (error.tag) {
    case 'UnreadableQuantity':
      return `${error.needed} at character ${error.at + 1}`;
    case 'WrongUnit':
      return neededUnit(error);
    case 'DivisionByZero':
      return 'a divisor that is not zero';
  }
}

export function wordsForUnits(error: UnitsError): string {
  switch (error.tag) {
    case 'UnreadableQuantity':
      return `"${error.text}" cannot be read: ${error.found} at character ${error.at + 1}; write ${error.needed} there`;
    case 'WrongUnit':
      return `the figure ${error.found === 'ratio' ? 'has no unit' : `is in ${showUnit(error.found)}`}; write ${neededUnit(error)}`;
    case 'DivisionByZero':
      return mustBe(`the divisor of ${error.dividend} divided by ${error.divisor}`, 'zero', 'another figure');
  }
}
