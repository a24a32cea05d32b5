/**
 * "The brochure says my skid steer is 5,700. With the bucket on, what is it really, and where does it balance?"
 *
 * No table here knows your machine. A scale does: one axle, then the other, with the attachment that travels.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { machineBalance } from '../../src/load/index.js';
import { difference, given, weakestInputs } from '../../src/trace/index.js';
import { lb } from '../../src/units/index.js';
import { inches, loadUp, skidSteer, tell } from './yard.js';

const brochure = given('weight by the brochure', lb(5700), 'stated');
const { weight, behindFrontAxle, balancePoint } = orThrow(machineBalance(skidSteer));
const more = difference('scale less brochure', weight, brochure);
const footing = weakestInputs(weight);

tell(
  'How heavy is my machine, and where does it balance?',
  [
    `Front axle ${loadUp(skidSteer.frontAxle)}, rear axle ${loadUp(skidSteer.rearAxle)}: ${loadUp(weight)}, which rests on a ${footing.basis}. That is ${loadUp(more)} more than the brochure.`,
    `It balances ${inches(behindFrontAxle)} behind its front axle, ${inches(balancePoint)} behind the bucket's edge: that is the balance point to place it by.`,
    'Raise the bucket, change the attachment or fill the tank and weigh again. A brochure weight is usually without attachment, operator and fuel.',
  ],
  weight,
  balancePoint,
);

assert.deepEqual([loadUp(weight), loadUp(more), footing.basis], ['6,200 lb', '500 lb', 'scale']);
assert.deepEqual([inches(behindFrontAxle), inches(balancePoint)], ['17.7 in', '69.7 in']);
