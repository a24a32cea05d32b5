/**
 * "Torsion axles or leaf springs? And does the trailer have to ride level?"
 *
 * Leaf springs on rockers share alike at any attitude. Independent axles share by how far each is pressed: with the ball too
 * high, the rear axle carries the more.
 */
import assert from 'node:assert/strict';
import { tandemSplit } from '../../src/axles/index.js';
import { orThrow } from '../../src/errors.js';
import { levelDrop } from '../../src/load/index.js';
import { inch, lbPerInch } from '../../src/units/index.js';
import { inches, loaded, loadUp, tell } from './yard.js';

const rockers = orThrow(tandemSplit(loaded.axleLoad, { suspension: 'equalised', axles: 2 }));
const torsion = orThrow(
  tandemSplit(loaded.axleLoad, {
    suspension: 'independent',
    ballAboveLevel: inch(3),
    axles: [
      { at: inch(187), rate: lbPerInch(2200) },
      { at: inch(221), rate: lbPerInch(2200) },
    ],
  }),
);
const { drop } = levelDrop(inch('25.5'), inch(21));
const [leafFront, leafRear] = rockers.loads;
const [front, rear] = torsion.loads;
assert(leafFront && leafRear && front && rear);

tell(
  'Torsion or leaf, and must it ride level?',
  [
    `Leaf springs with rockers: ${loadUp(leafFront)} and ${loadUp(leafRear)}, nose up or down, while the rockers move freely.`,
    `Torsion axles of 2,200 lb an inch with the ball 3 in too high: front ${loadUp(front)}, rear ${loadUp(rear)}.`,
    `So independent axles want a level trailer. Receiver at 25.5 in, coupler at 21 in with the trailer level: the mount must drop ${inches(drop)}.`,
    ...rockers.notes.map(({ says }) => `- ${says}`),
  ],
  front,
  rear,
  drop,
);

assert.deepEqual([loadUp(leafFront), loadUp(leafRear)], ['5,580 lb', '5,580 lb']);
assert.deepEqual([loadUp(front), loadUp(rear), inches(drop)], ['4,988 lb', '6,081 lb', '4.5 in']);
