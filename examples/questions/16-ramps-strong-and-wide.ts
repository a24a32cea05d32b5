/**
 * "These ramps say 3,500 per axle. My skid steer is 6,200. Good enough? And how far apart do I set them?"
 *
 * A rating by axle and a rating by machine are two different ratings; which one it is stands on the ramp. And both axles
 * must fit one setting.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { rampCapacity, rampSpacing } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { sum } from '../../src/trace/index.js';
import { inch, lb } from '../../src/units/index.js';
import { capacityDown, inches, loadUp, skidSteer, tell, trailer } from './yard.js';

const machine = {
  weight: sum('machine weight', [skidSteer.frontAxle, skidSteer.rearAxle]),
  axleLoads: [skidSteer.frontAxle, skidSteer.rearAxle],
};
const byAxle = orThrow(rampCapacity(rating('ramp pair, axle', lb(3500)), machine)).check;
const byMachine = orThrow(rampCapacity(trailer.ramps.rated, machine)).check;
const spacing = orThrow(
  rampSpacing(skidSteer.axles, { rampWidth: inch(18), margin: inch(1), closest: inch(40), widest: inch(70) }),
);

tell(
  'Are the ramps strong enough, and how far apart do they go?',
  [
    `The pair rated 3,500 lb by axle: the heavy axle is ${loadUp(byAxle.load)}: ${byAxle.verdict}, though each ramp "takes half".`,
    `The TD-14's own pair, rated ${capacityDown(byMachine.limit)} for the whole machine: ${loadUp(byMachine.load)}: ${byMachine.verdict}. Neither rating can be made from the other.`,
    `Middle to middle the ramps go from ${inches(spacing.lower.at)} to ${inches(spacing.upper.at)} apart, so that every tire keeps an inch of ramp on both sides.`,
    'The axle loads shift rearward while it climbs, and the bucket moves them too.',
  ],
  byAxle.reserve,
  byMachine.reserve,
  spacing.lower.at,
  spacing.upper.at,
);

assert.deepEqual([byAxle.verdict, byMachine.verdict], ['over', 'within']);
assert.deepEqual([inches(spacing.lower.at), inches(spacing.upper.at), spacing.empty], ['54 in', '62 in', false]);
