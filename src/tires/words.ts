/** The words for what can go wrong with tires. */
import { mustBe } from '../units/index.js';
import type { TiresOwnError } from './errors.js';

export function wordsForTires(error: TiresOwnError): string {
  switch (error.tag) {
    case 'UnreadableDesignation': {
      const near = error.nearest === undefined ? '' : `; the nearest printed rows are ${error.nearest.join(', ')}`;
      return `the ${error.part} in the tire designation "${error.text}" cannot be read: ${error.found} at character ${error.at + 1}; write ${error.needed}${near}`;
    }
    case 'SizeNeeded':
      return `load range ${error.letter} alone gives no pressure in the family ${error.family}; give the size`;
    case 'LoadRangeNeeded':
      return `${error.designation} has no load range; give the load range or ply rating from the sidewall, or the molded load`;
    case 'NoDualRating':
      return `${error.designation} has a single load only; give the dual load from the sidewall or a dual index: it is never derived from the single load`;
    case 'DualAboveSingle':
      return mustBe('the dual load', error.dual, `at most the single load, ${error.single}`);
    case 'NotPositive':
      return mustBe(error.what, error.found, 'greater than zero');
    case 'PressureAboveRated':
      return mustBe(
        'the pressure',
        error.asked,
        `at most the rated one, ${error.rated}; more pressure gives no more load`,
      );
    case 'LoadAboveRating':
      return mustBe('the load', error.load, `at most the rating, ${error.rating}; no pressure serves above it`);
    case 'NoAspectRatio':
      return `${error.size} has no aspect ratio; give the published diameter of the tire`;
    case 'NoTires':
      return 'the axle has no tires; give at least one';
    case 'NoPlacardAbove':
      return mustBe(
        'the GVWR on a tire and loading placard',
        error.gvwr,
        `at most ${error.most}; heavier trailers follow the rules of the certification label`,
      );
    case 'UnloadedAboveGvwr':
      return mustBe('the unloaded weight', error.unloaded, `at most the GVWR, ${error.gvwr}`);
    case 'UnreadableDateCode':
      return `the date code "${error.text}" gives no week and year; write ${error.needed}`;
  }
}
