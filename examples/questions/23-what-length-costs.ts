/**
 * "What do four more feet of deck cost me?"
 *
 * Pounds of payload: every foot of rail, crossmember and planking is weight under the same label.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { board, payloadByLength, publishedSection, weightPerFootOfDeck } from '../../src/members/index.js';
import { difference } from '../../src/trace/index.js';
import { foot, inch, lbPerFt, lbPerFt3, ratio, roundLoadUp, show } from '../../src/units/index.js';
import { capacityDown, loadUp, tell, trailer } from './yard.js';

const planks = orThrow(board('2x8', { by: 'density', density: lbPerFt3(38) }));
const { perFoot } = orThrow(
  weightPerFootOfDeck({
    rails: [{ name: 'rails', member: orThrow(publishedSection('C6x8.2')), count: ratio(2) }],
    crossmembers: [
      { name: 'crossmembers', member: orThrow(publishedSection('C3x4.1')), length: inch(83), spacing: inch(16) },
    ],
    surfaces: [{ name: 'planking', width: inch(83), weight: planks.weightPerSquareFoot }],
  }),
);
const { rows } = orThrow(
  payloadByLength({
    gvwr: trailer.gvwr,
    baseWeight: trailer.empty,
    baseLength: foot(20),
    perFoot,
    lengths: [20, 22, 24].map(foot),
  }),
);
const [base, , longest] = rows;
assert(base && longest);
const cost = difference('payload given up', base.payload, longest.payload);

tell(
  'What do four more feet of deck cost?',
  [
    `Two C6x8.2 rails, C3x4.1 crossmembers every 16 in and 83 in of planking: ${show(roundLoadUp(perFoot.value, lbPerFt('0.1')))} of deck.`,
    ...rows.map(
      ({ length, emptyWeight, payload }) =>
        `- ${show(length.value)}: ${loadUp(emptyWeight)} empty, ${capacityDown(payload)} of payload on the GVWR`,
    ),
    `Four feet cost ${loadUp(cost)} of payload, as long as the same rails and axles serve; the load also moves, so place the machine anew.`,
    'An option is reckoned in the same way: its weight, and where it sits.',
  ],
  perFoot,
  cost,
);

assert.deepEqual(
  rows.map(({ payload }) => capacityDown(payload)),
  ['10,350 lb', '10,208 lb', '10,067 lb'],
);
assert.equal(loadUp(cost), '283 lb');
