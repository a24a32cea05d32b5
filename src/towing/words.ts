/** The words for what can go wrong with towing questions. */
import { fromWire, mustBe, type WireQuantity } from '../units/index.js';
import { showCrossed, showInWords } from '../units/internal.js';
import type { TowingError } from './errors.js';

const told = (figure: WireQuantity): string => showInWords(fromWire(figure));
const crossed = (large: WireQuantity, small: WireQuantity): readonly [string, string] =>
  showCrossed(fromWire(large), fromWire(small));

export function wordsForTowing(error: TowingError): string {
  switch (error.tag) {
    case 'NotAboveZero':
      return mustBe(error.what, told(error.found), 'greater than zero');
    case 'BelowZero':
      return mustBe(error.what, told(error.found), 'zero or more');
    case 'NotAShare':
      return mustBe(error.what, told(error.found), 'above 0 % and at most 100 %');
    case 'HitchContradicts': {
      const hitch = error.hitch === 'gooseneck' ? 'a gooseneck' : 'a ball behind the rear axle';
      return `the overhang is ${told(error.overhang)}; ${hitch} needs ${error.needed}`;
    }
    case 'BarsNeedBallBehind':
      return mustBe(
        'the overhang of a weight distributing hitch',
        told(error.overhang),
        'zero or more: the ball behind the rear axle',
      );
    case 'NothingToRestore':
      return mustBe(
        'what the tongue takes off the front axle',
        told(error.offFront),
        'greater than zero for a share of it to be restored',
      );
    case 'TongueAboveGross': {
      const [tongue, gross] = crossed(error.tongue, error.gross);
      return mustBe('the tongue load', tongue, `at most the gross weight, ${gross}`);
    }
    case 'JackBehindAxles': {
      const [jack, axles] = crossed(error.jackBehindBall, error.axlesAt);
      return mustBe('the place of the jack', `${jack} behind the ball`, `ahead of the axles, ${axles} behind it`);
    }
    case 'ReadingBelowTare': {
      const [tare, reading] = crossed(error.tare, error.reading);
      return mustBe('the reading with the tongue on the lever', reading, `at least that of the beam alone, ${tare}`);
    }
    case 'TicketsDoNotClose': {
      const [gap, allowed] = crossed(error.gap, error.allowed);
      const readings = `${told(error.first)} and ${told(error.second)}`;
      return mustBe(`the difference between ${error.what} (${readings})`, gap, `at most ${allowed}; weigh again`);
    }
    case 'TicketsCannotTell': {
      const from = error.passes.length === 0 ? 'without a ticket' : `from the tickets of ${error.passes.join(', ')}`;
      return `${error.asked} cannot be told ${from}; it takes ${error.needed}`;
    }
    case 'NothingLimits':
      return `nothing limits the trailer; give one or more of ${error.missing.join(', ')}`;
  }
}
