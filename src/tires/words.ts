/** The words for what can go wrong with tires. */
import type { AskedFoundNeeded } from '../units/index.js';
import type { TiresOwnError } from './errors.js';

export function wordsForTires(error: TiresOwnError): AskedFoundNeeded {
  switch (error.tag) {
    case 'UnreadableDesignation':
      return {
        asked: `the ${error.part} in the tire designation "${error.text}"`,
        found: `${error.found} at character ${error.at + 1}`,
        needed:
          error.nearest === undefined
            ? error.needed
            : `${error.needed}; the nearest printed sizes are ${error.nearest.join(', ')}`,
      };
    case 'SizeNeeded':
      return {
        asked: `the pressure of load range ${error.letter} in the family ${error.family}`,
        found: 'no size',
        needed: 'the size: in this family the letter alone gives no pressure',
      };
    case 'LoadRangeNeeded':
      return {
        asked: `the table load of ${error.designation}`,
        found: 'no load range',
        needed: 'the load range or ply rating from the sidewall, or the molded load',
      };
    case 'NoDualRating':
      return {
        asked: `the dual load of ${error.designation}`,
        found: 'a single load only',
        needed: 'the dual load from the sidewall or a dual index: it is never derived from the single load',
      };
    case 'DualAboveSingle':
      return {
        asked: 'the loads of one tire',
        found: `dual ${error.dual} above single ${error.single}`,
        needed: 'a dual load that is not above the single load',
      };
    case 'NotPositive':
      return { asked: error.what, found: error.found, needed: 'a figure above zero' };
    case 'PressureAboveRated':
      return {
        asked: `the load at ${error.asked}`,
        found: `a tire rated at ${error.rated}`,
        needed: 'a pressure up to the rated one; more pressure gives no more load',
      };
    case 'LoadAboveRating':
      return {
        asked: `the pressure for a load of ${error.load}`,
        found: `a tire rated at ${error.rating}`,
        needed: 'a load up to the rating; no pressure serves above it',
      };
    case 'NoAspectRatio':
      return {
        asked: `the dimensions of ${error.size}`,
        found: 'a size without an aspect ratio',
        needed: 'the published diameter of the tire',
      };
    case 'NoTires':
      return { asked: 'the tires of one axle', found: 'none', needed: 'at least one tire' };
    case 'NoPlacardAbove':
      return {
        asked: `a tire and loading placard at a GVWR of ${error.gvwr}`,
        found: `a rating above ${error.most}`,
        needed: 'the certification label rules for heavier trailers',
      };
    case 'UnloadedAboveGvwr':
      return {
        asked: 'a cargo capacity',
        found: `an unloaded weight of ${error.unloaded} above the GVWR of ${error.gvwr}`,
        needed: 'an unloaded weight within the GVWR',
      };
    case 'UnreadableDateCode':
      return { asked: `the date code "${error.text}"`, found: 'no week and year', needed: error.needed };
  }
}
