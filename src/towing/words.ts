/** The words for what can go wrong with towing questions. */
import { type AskedFoundNeeded, showWire } from '../units/index.js';
import type { TowingError } from './errors.js';

export function wordsForTowing(error: TowingError): AskedFoundNeeded {
  switch (error.tag) {
    case 'NotAboveZero':
      return { asked: error.what, found: showWire(error.found), needed: 'a figure greater than zero' };
    case 'BelowZero':
      return { asked: error.what, found: showWire(error.found), needed: 'a figure of zero or more' };
    case 'NotAShare':
      return { asked: error.what, found: showWire(error.found), needed: 'a share above 0 % and not above 100 %' };
    case 'HitchContradicts':
      return {
        asked: `a ${error.hitch === 'gooseneck' ? 'gooseneck' : 'ball behind the rear axle'}`,
        found: `an overhang of ${showWire(error.overhang)}`,
        needed: error.needed,
      };
    case 'BarsNeedBallBehind':
      return {
        asked: 'a weight distributing hitch',
        found: `an overhang of ${showWire(error.overhang)}`,
        needed: 'a ball behind the rear axle',
      };
    case 'NothingToRestore':
      return {
        asked: 'a fraction of the front axle load restored',
        found: `${showWire(error.offFront)} taken off the front axle by the tongue`,
        needed: 'a tongue that takes load off the front axle',
      };
    case 'TongueAboveGross':
      return {
        asked: 'a trailer on its tongue and axles',
        found: `a tongue load of ${showWire(error.tongue)} on a gross weight of ${showWire(error.gross)}`,
        needed: 'a tongue load not above the gross weight',
      };
    case 'JackBehindAxles':
      return {
        asked: 'the load at the jack',
        found: `a jack ${showWire(error.jackBehindBall)} behind the ball, axles ${showWire(error.axlesAt)} behind it`,
        needed: 'a jack ahead of the axles',
      };
    case 'ReadingBelowTare':
      return {
        asked: 'the tongue on a lever',
        found: `a reading of ${showWire(error.reading)}, beam alone ${showWire(error.tare)}`,
        needed: 'a reading not below that of the beam alone',
      };
    case 'TicketsDoNotClose':
      return {
        asked: error.what,
        found: `${showWire(error.first)} and ${showWire(error.second)}, ${showWire(error.gap)} apart`,
        needed: `a difference of at most ${showWire(error.allowed)}: weigh again`,
      };
    case 'TicketsCannotTell':
      return {
        asked: error.asked,
        found: error.passes.length === 0 ? 'no ticket' : `tickets of ${error.passes.join(', ')}`,
        needed: error.needed,
      };
    case 'NothingLimits':
      return { asked: 'the largest trailer', found: 'no limit', needed: `one or more of ${error.missing.join(', ')}` };
  }
}
