/** The words for what can go wrong with weights and their places, ramps and tiedowns. */
import { fromWire, mustBe, showBrief, showWire } from '../units/index.js';
import type { LoadError } from './errors.js';

export function wordsForLoad(error: LoadError): string {
  switch (error.tag) {
    case 'AxlesNotBehindCoupler':
      return mustBe('the distance from coupler to axles', showWire(error.axlesAt), 'greater than zero');
    case 'NothingWeighed':
      return mustBe('the total weight', showWire(error.gross), 'greater than zero');
    case 'TongueAboveWeight':
      return mustBe(
        `the tongue load of ${error.of}`,
        showBrief(fromWire(error.tongue)),
        `at most its weight, ${showBrief(fromWire(error.weight))}`,
      );
    case 'NoLimits':
      return 'no rating limits the payload; give the GVWR from the label, or another rating';
    case 'RampTooShort':
      return mustBe(
        'the ramp length',
        showBrief(fromWire(error.length)),
        `at least the deck height, ${showBrief(fromWire(error.height))}`,
      );
    case 'NothingGiven':
      return `no ${error.what} given; give at least one`;
    case 'NothingLimits':
      return `none of the given limits (${error.given.join(', ')}) bounds ${error.what}; give a hitch tongue limit or an axle limit`;
    case 'MachineAxleLoadsMissing':
      return `the ramps are rated by axle load and only the machine weight, ${showBrief(fromWire(error.machineWeight))}, is known; give the load on each axle of the machine`;
    case 'SectionNotForThisWeight':
      return mustBe(
        `the weight of an article tied by the ${error.section} section`,
        showBrief(fromWire(error.weight)),
        `at most ${showBrief(fromWire(error.most))}; otherwise use another section`,
      );
  }
}
