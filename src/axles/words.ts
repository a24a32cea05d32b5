/** The words for what can go wrong with axles. */
import { fromWire, lb, mustBe, roundCapacityDown, roundLoadUp, show } from '../units/index.js';
import { showInWords } from '../units/internal.js';
import type { AxlesError } from './errors.js';
import { wordsForHardware } from './hardware/hardware-errors.js';

export function wordsForAxles(error: AxlesError): string {
  switch (error.tag) {
    case 'HardwareNotAboveZero':
    case 'NoBrakes':
      return wordsForHardware(error);
    case 'GawrAboveParts': {
      const [gawr, bears] = [roundLoadUp(fromWire(error.gawr), lb(1)), roundCapacityDown(fromWire(error.bears), lb(1))];
      const needed = `at most ${show(bears)}, the rating of its ${error.part}; read the label and the part again`;
      return mustBe(`the GAWR of ${error.of}`, show(gawr), needed);
    }
    case 'AxleUnknown':
      return `nothing is known of ${error.of}; give the GAWR from the label, or the ratings of its parts`;
    case 'RatingNotPositive':
      return mustBe(
        `the ${error.part} rating of ${error.of}`,
        showInWords(fromWire(error.rating)),
        'greater than zero; leave out what is not known',
      );
    case 'NoAxles':
      return 'an axle group has no axles; give at least one axle';
    case 'SharingUnknown':
      return `how ${error.axles} independent axles share their load cannot be told; give the spring rate of every axle, or an equalised suspension`;
  }
}
