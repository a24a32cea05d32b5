/** The words for what can go wrong with weights and balance. */
import { type AskedFoundNeeded, show, showBrief } from '../units/index.js';
import type { LoadError } from './errors.js';
import { wordsForLoading } from './loading-words.js';

export function wordsForLoad(error: LoadError): AskedFoundNeeded {
  switch (error.tag) {
    case 'AxlesNotBehindCoupler':
      return {
        asked: 'the balance of the trailer',
        found: `axles ${show(error.axlesAt)} behind the coupler`,
        needed: 'axles that stand behind the coupler',
      };
    case 'NothingWeighed':
      return {
        asked: 'the balance of the trailer',
        found: `a weight of ${show(error.gross)}`,
        needed: 'a weight above zero',
      };
    case 'TongueAboveWeight':
      return {
        asked: `the balance of ${error.of}`,
        found: `a tongue load of ${showBrief(error.tongue)} on a weight of ${showBrief(error.weight)}`,
        needed: 'a tongue load no greater than the weight it is part of',
      };
    case 'ShareOutOfRange':
      return {
        asked: `a tongue share from ${show(error.low)} to ${show(error.high)}`,
        found: 'a band outside 0 to 1, or upside down',
        needed: 'a low end above 0, not above the high end, below 1',
      };
    case 'NoLimits':
      return {
        asked: 'the payload',
        found: 'no rating that limits it',
        needed: 'the GVWR from the label, or another rating',
      };
    default:
      return wordsForLoading(error);
  }
}
