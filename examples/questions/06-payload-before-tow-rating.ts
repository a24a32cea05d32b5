/**
 * "The brochure gives my pickup 11,000 pounds of towing. Why does everybody tell me seven?"
 *
 * The tongue load is cargo to the truck. The placard on the door is used up long before the tow rating is.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { largestTrailer } from '../../src/towing/index.js';
import { percent } from '../../src/units/index.js';
import { capacityDown, loadUp, pickup, tell } from './yard.js';

const { trailer, tongue, governing, bounds, notChecked } = orThrow(
  largestTrailer({ vehicle: pickup, tongueShare: percent(12) }),
);

tell(
  'Why does the payload run out before the tow rating?',
  [
    `At 12 % on the tongue these limits allow a trailer of ${capacityDown(trailer)} with a tongue of ${loadUp(tongue)}, set by ${governing.map(({ name }) => name).join(' and ')}.`,
    ...bounds.map(({ name, limit }) => `- by ${name}: ${capacityDown(limit)}`),
    'Every pound of people and gear in the cab takes about eight pounds off the trailer.',
    `Not asked for want of a figure: ${notChecked.map(({ what }) => what).join(', ')}. Any of them may be lower still.`,
  ],
  trailer,
);

assert.equal(capacityDown(trailer), '7,083 lb');
assert.deepEqual(
  governing.map(({ name }) => name),
  ['occupant and cargo placard'],
);
