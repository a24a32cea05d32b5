/** The words for what can go wrong with a question over whole answers. */
import type { ChooseError } from './errors.js';

export function wordsForChoose(error: ChooseError): string {
  switch (error.tag) {
    case 'NotInTheSpec':
      return `the spec has no such figure; the nearest are ${error.nearest.join(', ')}`;
    case 'UnusableFigure':
      return `found ${error.found}; give ${error.needed}`;
    case 'NothingToAnswer':
      return `${error.question} cannot be answered: ${error.missing} is missing`;
  }
}
