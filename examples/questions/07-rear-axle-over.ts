/**
 * "My truck is well under its GVWR and the scale man says the rear axle is over. How can that be?"
 *
 * The ball hangs behind the axle, so the rear axle takes the tongue load and what the tongue levers off the front as well.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import { hitchedAxleLoads } from '../../src/towing/index.js';
import { sum } from '../../src/trace/index.js';
import { capacityDown, loadUp, pickup, smallTrailer, tell } from './yard.js';

const { front, rear, offFront, ontoRear } = orThrow(hitchedAxleLoads({ ...pickup, tongue: smallTrailer.tongue }));
const rearCheck = checkLoad(rating('tow vehicle rear GAWR', pickup.rearGawr), weight('tow vehicle rear axle', rear));
const whole = checkLoad(
  rating('tow vehicle GVWR', pickup.gvwr),
  weight('tow vehicle hitched', sum('tow vehicle hitched', [front, rear])),
);

tell(
  'Why is my rear axle over?',
  [
    `The tongue is ${loadUp(smallTrailer.tongue)}, yet the rear axle gains ${loadUp(ontoRear)}: the tongue itself and ${loadUp(offFront)} it levers off the front axle.`,
    `Rear axle ${loadUp(rear)} against a GAWR of ${capacityDown(rearCheck.limit)}: ${rearCheck.verdict}.`,
    `Whole truck ${loadUp(whole.load)} against a GVWR of ${capacityDown(whole.limit)}: ${whole.verdict}. Both are limits, and the one does not answer for the other.`,
    'A shorter overhang, less behind the axle in the bed, or less tongue load helps. Spring bars are not counted here.',
  ],
  rear,
  whole.load,
);

assert.deepEqual([loadUp(ontoRear), loadUp(rear), loadUp(front)], ['1,278 lb', '3,828 lb', '2,823 lb']);
assert.deepEqual([rearCheck.verdict, whole.verdict], ['over', 'within']);
