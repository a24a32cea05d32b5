/**
 * "How long do the ramps have to be? My machine's book says no more than fifteen degrees."
 *
 * The tilt deck's edge is low and its ramp is short; a straight deck at 34 inches wants a ramp nobody can lift.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { frictionNeeded, rampAngle, rampLength } from '../../src/load/index.js';
import { degree, inch, roundNearest, show } from '../../src/units/index.js';
import { excavator, loadUp, number, tell, trailer } from './yard.js';

const { angle } = orThrow(rampAngle(trailer.ramps.height, trailer.ramps.length));
const tilt = orThrow(rampLength(trailer.ramps.height, degree(15)));
const straight = orThrow(rampLength(inch(34), degree(15)));
const climb = orThrow(frictionNeeded(excavator.weight, angle));
const degrees = show(roundNearest(angle.value, degree('0.1')));
const shop = ({ value }: typeof tilt.length): string => show(roundNearest(value, inch('0.1')));

tell(
  'How long must the ramps be, and how steep are they?',
  [
    `The TD-14: 66 in of ramp to an edge 16 in high stands at ${degrees}. For 15 degrees ${shop(tilt.length)} would do.`,
    `A straight deck at 34 in would need ${shop(straight.length)} of ramp for the same 15 degrees.`,
    `At ${degrees} the tracks must find a grip of ${number(climb.grip)}, and the excavator pulls down the ramp with ${loadUp(climb.pull)}.`,
    "Fifteen degrees is one machine maker's figure, taken from its book: use the figure in yours. Wet steel grips less than dry.",
  ],
  angle,
  tilt.length,
  straight.length,
  climb.grip,
  climb.pull,
);

assert.deepEqual([degrees, shop(tilt.length), shop(straight.length)], ['14 deg', '61.8 in', '131.4 in']);
assert.deepEqual([number(climb.grip), loadUp(climb.pull)], ['0.25', '2,182 lb']);
