/**
 * "How many chains for the excavator, and is three-eighths grade 70 enough?"
 *
 * Strength asks for half the weight, and a chain from trailer to machine counts half. The number asked by the section is a
 * second question; the larger answer holds.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { howManyTiedowns, type TiedArticle, tiedownWll, whichTiedownSize } from '../../src/load/index.js';
import { capacityDown, excavator, loadUp, number, tell } from './yard.js';

const article: TiedArticle = {
  weight: excavator.weight,
  length: excavator.length,
  blockedForward: false,
  section: 'heavy equipment',
};
const chain = orThrow(tiedownWll([{ part: 'chain', size: '3/8', grade: '70' }]));
const many = orThrow(howManyTiedowns(article, { wll: chain.wll, runs: 'direct' }));
const size = orThrow(whichTiedownSize(article, 4, 'direct', { part: 'chain', grade: '70' }));
const [reading] = many.readings;
const { smallest } = size;
assert(reading && smallest !== 'none in the table');

tell(
  'How many tiedowns, and which chain?',
  [
    `Half the weight, ${loadUp(many.needed)}, must be held. A 3/8 in grade 70 chain has a limit of ${capacityDown(chain.wll)} and counts ${capacityDown(many.countedEach)} run direct.`,
    `By strength ${number(many.byStrength)} would do; tied by the heavy equipment section it takes ${number(reading.number)}.`,
    `With four of them, grade 70 of ${smallest.size} in is already strong enough (${capacityDown(smallest.counted)} counted).`,
    ...many.notes.map(({ says }) => `- ${says}`),
  ],
  many.byStrength,
  reading.number,
  smallest.counted,
);

assert.deepEqual([loadUp(many.needed), capacityDown(many.countedEach)], ['4,500 lb', '3,300 lb']);
assert.deepEqual([number(many.byStrength), number(reading.number), smallest.size], ['2', '4', '1/4']);
