/**
 * "It wags its tail at sixty. How fast is safe?"
 *
 * No speed is given here: damping, tires, wind and the truck are not in any static figure. What can be compared is how far
 * from the centre of gravity the same load is spread, at the same tongue load.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { compareLayouts, type Layout } from '../../src/load/index.js';
import { inch, lb } from '../../src/units/index.js';
import { inches, loadUp, number, tell, trailer } from './yard.js';

const empty = { name: 'trailer', weight: trailer.empty, at: inch(175), length: inch(312) };
const pallet = (name: string, at: number) => ({ name, weight: lb(3000), at: inch(at), length: inch(48) });
const layouts: readonly Layout[] = [
  { name: 'close together', items: [empty, pallet('first pallet', 158), pallet('second pallet', 206)] },
  { name: 'at the ends', items: [empty, pallet('first pallet', 86), pallet('second pallet', 278)] },
];
const [close, ends] = orThrow(compareLayouts(trailer.axlesAt, layouts));
assert(close && ends);

tell(
  'Why does it sway, and how fast may I go?',
  [
    `Two pallets of 3,000 lb, close together or one at each end, both ways with ${loadUp(ends.tongue)} on the tongue.`,
    `Spread to the ends the trailer resists turning ${number(ends.toFirst)} times as much: radius of gyration ${inches(close.radius)} becomes ${inches(ends.radius)}. Once it swings, it is that much harder to stop.`,
    'Load in the middle, over and just ahead of the axles; enough tongue load; tires at pressure; nothing heavy behind the axles.',
    `No safe speed follows from this. ${close.notes.map(({ says }) => says).join(' ')}`,
  ],
  close.tongue,
  ends.tongue,
  ends.toFirst,
);

assert.equal(loadUp(close.tongue), loadUp(ends.tongue));
assert.equal(number(ends.toFirst), '2.51');
