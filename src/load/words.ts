/** The words for what can go wrong with weights and their places, ramps and tiedowns. */
import { fromWire, mustBe, type WireQuantity } from '../units/index.js';
import { showCrossed, showInWords } from '../units/internal.js';
import type { LoadError } from './errors.js';

const told = (figure: WireQuantity): string => showInWords(fromWire(figure));
const crossed = (large: WireQuantity, small: WireQuantity): readonly [string, string] =>
  showCrossed(fromWire(large), fromWire(small));

export function wordsForLoad(error: LoadError): string {
  switch (error.tag) {
    case 'AxlesNotBehindCoupler':
      return mustBe('the distance from coupler to axles', told(error.axlesAt), 'greater than zero');
    case 'NothingWeighed':
      return mustBe('the total weight', told(error.gross), 'greater than zero');
    case 'TongueAboveWeight': {
      const [tongue, weight] = crossed(error.tongue, error.weight);
      return mustBe(`the tongue load of ${error.of}`, tongue, `at most its weight, ${weight}`);
    }
    case 'NoLimits':
      return 'no rating limits the payload; give the GVWR from the label, or another rating';
    case 'RampTooShort': {
      const [height, length] = crossed(error.height, error.length);
      return mustBe('the ramp length', length, `at least the deck height, ${height}`);
    }
    case 'NothingGiven':
      return `no ${error.what} given; give at least one`;
    case 'NothingLimits':
      return `none of the given limits (${error.given.join(', ')}) bounds ${error.what}; give a hitch tongue limit or an axle limit`;
    case 'MachineAxleLoadsMissing':
      return `the ramps are rated by axle load and only the machine weight, ${told(error.machineWeight)}, is known; give the load on each axle of the machine`;
    case 'SectionNotForThisWeight': {
      const [weight, most] = crossed(error.weight, error.most);
      const what = `the weight of an article tied by the ${error.section} section`;
      return mustBe(what, weight, `at most ${most}; otherwise use another section`);
    }
  }
}
