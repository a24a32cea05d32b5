/**
 * "I went over the truck scale: steer 4,680, drive 5,680, trailer 11,160. What is my tongue weight?"
 *
 * That ticket alone does not contain it. With the truck weighed by itself it does, and a third weighing catches a misread.
 */
import assert from 'node:assert/strict';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describeError, orThrow } from '../../src/errors.js';
import { readScaleTickets, scaleDivision, tongueFromTickets } from '../../src/towing/index.js';
import { lb } from '../../src/units/index.js';
import { loadUp, number, tell } from './yard.js';

const coupled = { steer: lb(4680), drive: lb(5680), trailer: lb(11160) };
const alone = tongueFromTickets({ tickets: { barsOff: coupled }, division: scaleDivision });
const read = orThrow(
  readScaleTickets({
    tickets: { barsOff: coupled, truckAlone: { steer: lb(5140), drive: lb(3720) }, trailerAlone: lb(12660) },
    division: scaleDivision,
  }),
);
const { tongue, tongueWithin, gross, ontoRear, overhangOverWheelbase, closures, cannotTell } = read;
assert(isLeft(alone) && tongue && tongueWithin && gross && ontoRear && overhangOverWheelbase);

tell(
  'What does my scale ticket say?',
  [
    `The one coupled ticket cannot tell: ${describeError(alone.left)}.`,
    `With the truck alone at 5,140 and 3,720 lb: tongue ${loadUp(tongue)}, within ${loadUp(tongueWithin)} either way by the scale's rounding; whole trailer ${loadUp(gross)}.`,
    `The rear axle gained ${loadUp(ontoRear)}, more than the tongue, because the ball stands ${number(overhangOverWheelbase)} of a wheelbase behind it.`,
    ...closures.map(
      ({ what, gap, allowed }) => `The sums agree, ${what}: ${loadUp(gap)} apart, ${loadUp(allowed)} allowed.`,
    ),
    ...cannotTell.map(({ what, needs }) => `Still not in these tickets: ${what}; it needs ${needs}.`),
  ],
  tongue,
  gross,
  overhangOverWheelbase,
);

assert.deepEqual([loadUp(tongue), loadUp(gross), loadUp(ontoRear)], ['1,500 lb', '12,660 lb', '1,960 lb']);
assert.equal(number(overhangOverWheelbase), '0.31');
