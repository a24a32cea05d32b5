/** The words for what can go wrong with figures and tables. */
import { mustBe, showWire } from '../units/index.js';
import { collected } from '../units/internal.js';
import type { OutsideItsRange, TraceError } from './errors.js';

const ends: readonly (readonly ['above' | 'from' | 'to' | 'below', string])[] = [
  ['above', 'above'],
  ['from', 'at least'],
  ['to', 'at most'],
  ['below', 'below'],
];

/** `greater than zero`, `zero or more`, `at least 2 in and at most 90 in`. */
function rangeOf(error: OutsideItsRange): string {
  if (error.above?.value === '0' && error.to === undefined && error.below === undefined) return 'greater than zero';
  if (error.from?.value === '0' && error.to === undefined && error.below === undefined) return 'zero or more';
  return collected(ends, ([key, word]) => {
    const end = error[key];
    return end === undefined ? [] : [`${word} ${showWire(end)}`];
  }).join(' and ');
}

export function wordsForTrace(error: TraceError): string {
  switch (error.tag) {
    case 'NotTabulated': {
      const near = error.nearest.length === 0 ? '' : `; the nearest rows are ${error.nearest.join(', ')}`;
      const instead = error.instead === undefined ? '' : `; ${error.instead}`;
      return `the table ${error.table} has no row ${error.asked}${near}${instead}`;
    }
    case 'OutsideItsRange':
      return mustBe(error.what, showWire(error.found), rangeOf(error));
    case 'NotAWholeCount':
      return mustBe(
        error.what,
        error.found,
        error.most === undefined ? 'a whole number' : `a whole number from 1 to ${error.most}`,
      );
  }
}
