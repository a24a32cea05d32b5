/**
 * "Gooseneck or bumper pull, for the same weight?"
 *
 * The gooseneck puts twice the share on the truck and yet treats the axles better: its ball stands just ahead of the rear
 * axle, so nothing is levered off the front.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { hitchedAxleLoads } from '../../src/towing/index.js';
import { given, product } from '../../src/trace/index.js';
import { inch, ratio } from '../../src/units/index.js';
import { loaded, loadUp, share, tell, yardTruck } from './yard.js';

const { front, rear, wheelbase } = yardTruck;
assert(front && rear && wheelbase);
const shares = {
  ball: given('share on the ball', ratio('0.12'), 'stated'),
  pin: given('share on the gooseneck', ratio('0.20'), 'stated'),
};
const tongues = {
  ball: product('tongue load, ball behind', loaded.gross, shares.ball),
  pin: product('load on the gooseneck', loaded.gross, shares.pin),
};
const bumper = orThrow(
  hitchedAxleLoads({ hitch: 'ball behind', front, rear, wheelbase, overhang: inch(54), tongue: tongues.ball }),
);
const neck = orThrow(
  hitchedAxleLoads({ hitch: 'gooseneck', front, rear, wheelbase, overhang: inch(-4), tongue: tongues.pin }),
);

tell(
  'Gooseneck or bumper pull?',
  [
    `The same ${loadUp(loaded.gross)}. Ball 54 in behind the axle with 12 %: ${loadUp(tongues.ball)} on the hitch, the rear axle gains ${loadUp(bumper.ontoRear)} and the front loses ${loadUp(bumper.offFront)}.`,
    `Gooseneck 4 in ahead of the axle with 20 %: ${loadUp(tongues.pin)} on the hitch, the rear axle gains ${loadUp(neck.ontoRear)} and the front axle gains too: it ends at ${loadUp(neck.front)}.`,
    `The price is payload: the truck carries ${loadUp(tongues.pin)} instead of ${loadUp(tongues.ball)}, against its GVWR, its rear GAWR and its placard.`,
    `The shares of ${share(shares.ball)} and ${share(shares.pin)} are usual ones, not rules.`,
  ],
  bumper.front,
  bumper.rear,
  neck.front,
  neck.rear,
);

assert.deepEqual(
  [loadUp(tongues.ball), loadUp(bumper.ontoRear), loadUp(bumper.front)],
  ['1,518 lb', '1,984 lb', '4,685 lb'],
);
assert.deepEqual(
  [loadUp(tongues.pin), loadUp(neck.ontoRear), loadUp(neck.front)],
  ['2,530 lb', '2,473 lb', '5,208 lb'],
);
