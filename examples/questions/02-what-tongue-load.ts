/**
 * "How heavy is the tongue supposed to be when the excavator is on?"
 *
 * The seesaw says what it is; a published band says what is usually asked for. The band is guidance, never a promise.
 */
import assert from 'node:assert/strict';
import { guidelineFor, tongueAdvice } from '../../src/load/index.js';
import { capacityDown, loaded, loadUp, share, tell } from './yard.js';

const advice = tongueAdvice(loaded, guidelineFor('ball'));

tell(
  'What tongue load should it have?',
  [
    `With the excavator where it stands the tongue carries ${loadUp(loaded.tongue)}, ${share(loaded.tongueShare)} of a gross weight of ${loadUp(loaded.gross)}.`,
    `The guideline of ${share(advice.guideline.low)} to ${share(advice.guideline.high)} asks for ${loadUp(advice.least)} to ${capacityDown(advice.most)}: it stands ${advice.verdict}.`,
    `The band comes from ${advice.guideline.source.title}. The trailer maker's own figure comes first, and hitch, coupler and truck must each carry that tongue.`,
    'The share is of the whole laden trailer, not of the machine, and "60 % in front of the axles" is another thing altogether.',
  ],
  loaded.tongue,
  loaded.tongueShare,
  advice.least,
  advice.most,
);

assert.equal(loadUp(loaded.tongue), '1,491 lb');
assert.equal(share(loaded.tongueShare), '11.78 %');
assert.deepEqual([loadUp(advice.least), capacityDown(advice.most), advice.verdict], ['1,265 lb', '1,897 lb', 'inside']);
