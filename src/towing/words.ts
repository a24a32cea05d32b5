/** The words for what can go wrong with towing questions. */
import { mustBe, showWire } from '../units/index.js';
import type { TowingError } from './errors.js';

export function wordsForTowing(error: TowingError): string {
  switch (error.tag) {
    case 'NotAboveZero':
      return mustBe(error.what, showWire(error.found), 'greater than zero');
    case 'BelowZero':
      return mustBe(error.what, showWire(error.found), 'zero or more');
    case 'NotAShare':
      return mustBe(error.what, showWire(error.found), 'above 0 % and at most 100 %');
    case 'HitchContradicts': {
      const hitch = error.hitch === 'gooseneck' ? 'a gooseneck' : 'a ball behind the rear axle';
      return `the overhang is ${showWire(error.overhang)}; ${hitch} needs ${error.needed}`;
    }
    case 'BarsNeedBallBehind':
      return mustBe(
        'the overhang of a weight distributing hitch',
        showWire(error.overhang),
        'zero or more: the ball behind the rear axle',
      );
    case 'NothingToRestore':
      return mustBe(
        'what the tongue takes off the front axle',
        showWire(error.offFront),
        'greater than zero for a share of it to be restored',
      );
    case 'TongueAboveGross':
      return mustBe('the tongue load', showWire(error.tongue), `at most the gross weight, ${showWire(error.gross)}`);
    case 'JackBehindAxles':
      return mustBe(
        'the place of the jack',
        `${showWire(error.jackBehindBall)} behind the ball`,
        `ahead of the axles, ${showWire(error.axlesAt)} behind it`,
      );
    case 'ReadingBelowTare':
      return mustBe(
        'the reading with the tongue on the lever',
        showWire(error.reading),
        `at least that of the beam alone, ${showWire(error.tare)}`,
      );
    case 'TicketsDoNotClose':
      return mustBe(
        `the difference between ${error.what} (${showWire(error.first)} and ${showWire(error.second)})`,
        showWire(error.gap),
        `at most ${showWire(error.allowed)}; weigh again`,
      );
    case 'TicketsCannotTell': {
      const from = error.passes.length === 0 ? 'without a ticket' : `from the tickets of ${error.passes.join(', ')}`;
      return `${error.asked} cannot be told ${from}; it takes ${error.needed}`;
    }
    case 'NothingLimits':
      return `nothing limits the trailer; give one or more of ${error.missing.join(', ')}`;
  }
}
