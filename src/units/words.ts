/** The words for what can go wrong with figures. */
import type { UnitsError, WrongUnit } from './errors.js';
import { showUnit } from './show.js';
import { type Dimension, dimensionOf, isUnit } from './unit-list.js';

/** One frame for most errors: `wheelbase is 0 in; it must be greater than zero`. @example mustBe('wheelbase', '0 in', 'greater than zero') // wheelbase is 0 in; it must be greater than zero */
export const mustBe = (what: string, found: string, needed: string): string =>
  `${what} is ${found}; it must be ${needed}`;

/** An error in words, without its path: one sentence. Every chapter has one function that makes it from its errors. */
export type Words = string | AskedFoundNeeded;

/** The older form, until every chapter writes sentences. */
export interface AskedFoundNeeded {
  readonly asked: string;
  readonly found: string;
  readonly needed: string;
}

/** What stands in a file, in a few words: a list or a record is not written out, whatever its size and depth. */
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
  const { needed } = wordsForUnits(error);
  return error.tag === 'UnreadableQuantity' ? `${needed} at character ${error.at + 1}` : needed;
}

export function wordsForUnits(error: UnitsError): AskedFoundNeeded {
  switch (error.tag) {
    case 'UnreadableQuantity':
      return {
        asked: `the figure "${error.text}"`,
        found: `${error.found} at character ${error.at + 1}`,
        needed: error.needed,
      };
    case 'WrongUnit':
      return {
        asked: `a figure in ${error.needed}`,
        found: error.found === 'ratio' ? 'a number without a unit' : `one in ${showUnit(error.found)}`,
        needed: neededUnit(error),
      };
    case 'DivisionByZero':
      return {
        asked: `${error.dividend} divided by ${error.divisor}`,
        found: 'a divisor of zero',
        needed: 'a divisor that is not zero',
      };
  }
}
