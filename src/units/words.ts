/** The words for what can go wrong with figures. */
import type { UnitsError } from './errors.js';
import { showUnit } from './show.js';

/** An error in words: what was asked, what was found, what would be needed. Every chapter has one function that makes them. */
export interface Words {
  readonly asked: string;
  readonly found: string;
  readonly needed: string;
}

export function wordsForUnits(error: UnitsError): Words {
  switch (error.tag) {
    case 'UnreadableQuantity':
      return { asked: `the figure "${error.text}"`, found: `${error.found} at character ${error.at + 1}`, needed: error.needed };
    case 'WrongUnit':
      return { asked: `a figure in ${error.needed}`, found: error.found === 'ratio' ? 'a number without a unit' : `one in ${showUnit(error.found)}`, needed: `the same figure in ${error.needed}, converted by name` };
    case 'DivisionByZero':
      return { asked: `${error.dividend} divided by ${error.divisor}`, found: 'a divisor of zero', needed: 'a divisor that is not zero' };
  }
}
