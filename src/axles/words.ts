/** The words for what can go wrong with axles. */
import { type AskedFoundNeeded, lb, roundCapacityDown, roundLoadUp, show } from '../units/index.js';
import type { AxlesError } from './errors.js';
import { wordsForHardware } from './hardware-errors.js';

export function wordsForAxles(error: AxlesError): AskedFoundNeeded {
  switch (error.tag) {
    case 'HardwareNotAboveZero':
    case 'NoBrakes':
      return wordsForHardware(error);
    case 'GawrAboveParts':
      return {
        asked: `a GAWR of ${show(roundLoadUp(error.gawr, lb(1)))} on ${error.of}`,
        found: `${error.part} bearing ${show(roundCapacityDown(error.bears, lb(1)))}`,
        needed: 'a GAWR no higher than the weakest part: read the label and the part again',
      };
    case 'AxleUnknown':
      return {
        asked: `the rating of ${error.of}`,
        found: 'neither a GAWR nor a part',
        needed: 'the GAWR from the label, or the ratings of its parts',
      };
    case 'RatingNotPositive':
      return {
        asked: `the rating of ${error.of}`,
        found: `${error.part} rated at ${show(error.rating)}`,
        needed: 'a rating above zero: leave out what is not known',
      };
    case 'SpringRateNotPositive':
      return {
        asked: `the share of ${error.of} by its springs`,
        found: `a spring rate of ${show(error.rate)}`,
        needed: 'a spring rate above zero',
      };
    case 'NoAxles':
      return { asked: 'an axle group', found: 'no axles', needed: 'at least one axle' };
    case 'SharingUnknown':
      return {
        asked: `the share of each of ${error.axles} independent axles`,
        found: 'no spring rates',
        needed: 'the rate of every axle, or an equalised suspension',
      };
  }
}
