/**
 * "How do I weigh the tongue at home? My bathroom scale stops at 300."
 *
 * A plank, two pipes and the bathroom scale. The plank's own weight comes off first, and the factor is that of this plank:
 * here the scale stands three feet past the tongue, so it is four, not the three that everybody remembers.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { leverScale } from '../../src/towing/index.js';
import { foot, inch, lb } from '../../src/units/index.js';
import { loadUp, number, tell, trailer } from './yard.js';

const plank = { reading: lb(145), beamTare: lb(15), pipeToTongue: foot(1), tongueToScale: foot(3) };
const atCoupler = orThrow(leverScale({ ...plank, tongueRestsAt: 'coupler' }));
const atJack = orThrow(leverScale({ ...plank, tongueRestsAt: { jackBehindBall: inch(20), axlesAt: trailer.axlesAt } }));

tell(
  'How do I measure the tongue load at home?',
  [
    `Scale 145 lb with the tongue on the plank, 15 lb with the plank alone, one foot and three feet: the factor is ${number(atCoupler.factor)}.`,
    `Coupler on the plank: the tongue load is ${loadUp(atCoupler.tongue)}, which is what the yard scale found for the empty trailer.`,
    `Had the jack stood on the plank, 20 in behind the ball, the same reading would mean ${loadUp(atJack.tongue)} at the ball.`,
    'Level ground, level trailer, wheels chocked. Never put a loaded tongue on a plank that might break.',
  ],
  atCoupler.tongue,
  atJack.tongue,
);

assert.equal(loadUp(atCoupler.tongue), '520 lb');
assert.equal(number(atCoupler.factor), '4');
assert.equal(loadUp(atJack.tongue), '470 lb');
