/** The words for what can go wrong in placing, ramps and tiedowns. */
import { type AskedFoundNeeded, showBrief } from '../units/index.js';
import type { LoadingError } from './loading-errors.js';

export function wordsForLoading(error: LoadingError): AskedFoundNeeded {
  switch (error.tag) {
    case 'MustBeAboveZero':
      return { asked: error.what, found: showBrief(error.found), needed: 'a figure above zero' };
    case 'MustNotBeNegative':
      return { asked: error.what, found: showBrief(error.found), needed: 'zero or more' };
    case 'EndsReversed':
      return {
        asked: error.what,
        found: `a low end of ${showBrief(error.low)} and a high end of ${showBrief(error.high)}`,
        needed: 'the low end at or below the high end',
      };
    case 'OutsideItsRange':
      return {
        asked: error.what,
        found: showBrief(error.found),
        needed: `a figure between ${showBrief(error.from)} and ${showBrief(error.to)}`,
      };
    case 'RampTooShort':
      return {
        asked: 'a ramp from the ground to the deck',
        found: `a ramp of ${showBrief(error.length)} for a height of ${showBrief(error.height)}`,
        needed: 'a ramp at least as long as the deck is high',
      };
    case 'SpringRatesMissing':
      return {
        asked: `the split over ${error.axles} independent axles`,
        found: 'no spring rates',
        needed: 'the spring rate of each axle, its place, and how far the ball is from level height',
      };
    case 'NothingGiven':
      return { asked: error.what, found: 'none', needed: 'at least one' };
    case 'NotACount':
      return { asked: error.what, found: error.found, needed: `a whole number from 1 to ${error.most}` };
    case 'NothingLimits':
      return {
        asked: error.what,
        found: `no limit that bounds it (given: ${error.given.join(', ')})`,
        needed: 'a hitch tongue limit or an axle limit',
      };
    case 'MachineAxleLoadsMissing':
      return {
        asked: 'a ramp rating by axle load',
        found: `only the machine weight, ${showBrief(error.machineWeight)}`,
        needed: 'what each axle of the machine carries',
      };
    case 'SectionNotForThisWeight':
      return {
        asked: `the ${error.section} section`,
        found: `an article of ${showBrief(error.weight)}`,
        needed: `${showBrief(error.most)} or less, or another section`,
      };
  }
}
