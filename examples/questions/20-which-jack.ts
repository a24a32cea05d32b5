/**
 * "Tongue's about fifteen hundred. So a two-thousand-pound jack?"
 *
 * The jack stands nearer to the axles than the ball does and so lifts more than the tongue load; what is to be left in hand
 * on top is a choice, and somebody must make it.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { jackLoad } from '../../src/towing/index.js';
import { lb } from '../../src/units/index.js';
import { capacityDown, loaded, loadUp, tell, trailer } from './yard.js';

const spot = {
  tongue: loaded.tongue,
  jackBehindBall: trailer.jack.at,
  axlesAt: trailer.axlesAt,
  margin: trailer.jack.margin,
};
const small = orThrow(jackLoad({ ...spot, rating: lb(2000) }));
const fitted = orThrow(jackLoad({ ...spot, rating: trailer.jack.rating }));

tell(
  'Which jack?',
  [
    `The tongue is ${loadUp(loaded.tongue)}; 20 in behind the ball the jack's foot carries ${loadUp(small.foot)}.`,
    `With a margin of 125 %, chosen by the yard: ${loadUp(small.check.load)}. A 2,000 lb jack is ${small.check.verdict}; the fitted one of ${capacityDown(fitted.check.limit)} is ${fitted.check.verdict}, ${capacityDown(fitted.check.reserve)} left.`,
    'Take the greatest tongue load the trailer will ever have. Lifting the truck with the jack and side loads are other questions.',
  ],
  small.foot,
  small.check.load,
);

assert.deepEqual([loadUp(small.foot), loadUp(small.check.load)], ['1,653 lb', '2,066 lb']);
assert.deepEqual([small.check.verdict, fitted.check.verdict], ['over', 'within']);
