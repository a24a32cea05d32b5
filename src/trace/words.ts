/** The words for what can go wrong with figures and tables. */
import { fromWire, mustBe } from '../units/index.js';
import { collected, compareFigures, showInWords } from '../units/internal.js';
import type { OutsideItsRange, TraceError } from './errors.js';

/** The least of a range is told rounded up, the most rounded down: what is written as told lies within. */
const ends: readonly (readonly ['above' | 'from' | 'to' | 'below', string, 'up' | 'down'])[] = [
  ['above', 'above', 'up'],
  ['from', 'at least', 'up'],
  ['to', 'at most', 'down'],
  ['below', 'below', 'down'],
];

/** `greater than zero`, `zero or more`, `at least 2 in and at most 90 in`. */
function rangeOf(error: OutsideItsRange): string {
  if (error.above?.value === '0' && error.to === undefined && error.below === undefined) return 'greater than zero';
  if (error.from?.value === '0' && error.to === undefined && error.below === undefined) return 'zero or more';
  return collected(ends, ([key, word, mode]) => {
    const end = error[key];
    return end === undefined ? [] : [`${word} ${showInWords(fromWire(end), mode)}`];
  }).join(' and ');
}

/** What was found, rounded away from the end that it is beyond. */
function foundIn({ found, to, below }: OutsideItsRange): string {
  const [figure, most] = [fromWire(found), to ?? below];
  const isAbove = most !== undefined && most.unit === figure.unit && compareFigures(figure, fromWire(most)) >= 0;
  return showInWords(figure, isAbove ? 'up' : 'down');
}

export function wordsForTrace(error: TraceError): string {
  switch (error.tag) {
    case 'NotTabulated': {
      const near = error.nearest.length === 0 ? '' : `; the nearest rows are ${error.nearest.join(', ')}`;
      const instead = error.instead === undefined ? '' : `; ${error.instead}`;
      return `the table ${error.table} has no row ${error.asked}${near}${instead}`;
    }
    case 'OutsideItsRange':
      return mustBe(error.what, foundIn(error), rangeOf(error));
    case 'NotAWholeCount':
      return mustBe(
        error.what,
        error.found,
        error.most === undefined ? 'a whole number' : `a whole number from 1 to ${error.most}`,
      );
  }
}
