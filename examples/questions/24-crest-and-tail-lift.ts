/**
 * "Will my forklift hang up where the ramp meets the deck? And will it lift the back of my truck going on?"
 *
 * Two questions of geometry and one of the seesaw: the belly over the edge, and the whole machine on the rear edge while the
 * tongue is still empty.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { crestClearance, crestsOf, rampAngle, tailLift } from '../../src/load/index.js';
import { constant, difference } from '../../src/trace/index.js';
import { degree, inch, lb, roundNearest, show } from '../../src/units/index.js';
import { inches, loadUp, pickup, tell, trailer, yardTruck } from './yard.js';

const wheelbase = inch(50);
const belly = [{ name: 'belly', behindFrontAxle: inch(25), height: inch(4) }];
const { angle } = orThrow(rampAngle(trailer.ramps.height, trailer.ramps.length));
const tilt = orThrow(crestClearance(wheelbase, belly, orThrow(crestsOf(angle, 'straight deck', wheelbase)).crests));
const steep = orThrow(
  crestClearance(wheelbase, belly, orThrow(crestsOf(degree(21), 'straight deck', wheelbase)).crests),
);
const forklift = lb(6200);
const { rear, wheelbase: base } = yardTruck;
assert(rear && base);
const loading = {
  tongue: trailer.emptyTongue,
  axlesAt: trailer.axlesAt,
  deckRear: trailer.deck.rear,
  machineWeight: forklift,
};
const heavy = orThrow(tailLift({ ...loading, truck: { rearAxle: rear, wheelbase: base, overhang: inch(54) } }));
const light = orThrow(
  tailLift({ ...loading, truck: { rearAxle: pickup.rear, wheelbase: pickup.wheelbase, overhang: pickup.overhang } }),
);
assert(heavy.truckHolds && light.truckHolds);
const sharpest = show(roundNearest(tilt.sharpest.value, degree('0.1')));

const pull = difference('pull on the ball', constant(lb(0)), heavy.ball);

tell(
  'Will it hang up at the crest, and will it lift the truck?',
  [
    `Wheelbase 50 in, 4 in under the belly: it touches on any single edge sharper than ${sharpest}.`,
    `On the TD-14's edge it ${tilt.verdict}, ${inches(tilt.least)} to spare. On a ramp of 21 degrees it ${steep.verdict}: short by ${inches(steep.least).replace('-', '')}.`,
    `With its 6,200 lb on the rear edge the ball is pulled up with ${loadUp(pull)}. Behind the yard truck that is ${heavy.verdict}; behind the pickup it ${light.verdict}.`,
    `Rear legs that leave the ball alone must take ${loadUp(heavy.legs)}.`,
    ...heavy.notes.map(({ says }) => `- ${says}`),
  ],
  tilt.least,
  steep.least,
  pull,
  heavy.truckHolds,
  light.truckHolds,
  heavy.legs,
);

assert.deepEqual([sharpest, tilt.verdict, steep.verdict], ['18.2 deg', 'clears', 'touches']);
assert.deepEqual([heavy.verdict, light.verdict], ['held by the truck', 'lifts the truck']);
