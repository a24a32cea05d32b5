/**
 * "Do I need a CDL for this? And a DOT number?"
 *
 * What can be said: which published lines the ratings cross, by how much, read on which date. It is no legal advice, and
 * State law, the kind of work and a dozen exceptions stand outside it.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import {
  type CombinationWeights,
  commercialByWeight,
  distanceText,
  federalRule,
  licenceGroup,
} from '../../src/rules/index.js';
import { lb, show } from '../../src/units/index.js';
import { loadUp, tell, trailer } from './yard.js';

const behind = (truckGvwr: number): CombinationWeights => ({
  powerUnit: { gvwr: lb(truckGvwr), gross: 'not above GVWR' },
  towed: [{ gvwr: trailer.gvwr, gross: 'not above GVWR' }],
  labelGcwr: 'not shown',
});
const [heavy, light] = [orThrow(licenceGroup(behind(14000))), orThrow(licenceGroup(behind(11500)))];
const commercial = orThrow(commercialByWeight(behind(11500)));

tell(
  'Do I need a CDL, or a DOT number?',
  [
    `Behind a truck of 14,000 lb GVWR the combination rating is ${loadUp(heavy.rating.gcwr)}: group ${heavy.group} by weight, ${distanceText(heavy.distances[0])} of 26,001 lb, and the trailer ${distanceText(heavy.distances[1])} of 10,000 lb.`,
    `Behind a truck of 11,500 lb GVWR it is ${loadUp(light.rating.gcwr)}: ${light.group}, ${distanceText(light.distances[0])}. Both lines must be crossed.`,
    `The carrier line of 10,001 lb is ${commercial.reachesLine ? 'reached' : 'not reached'} even with the lighter truck (${distanceText(commercial.distance)}); whether it binds depends on whether the trip is commerce between States.`,
    'The ratings on the labels count, not the empty weight and not capacity added to empty weight.',
    `Read: ${federalRule('cdl-A').clause}; ${commercial.rule.clause}; as of ${commercial.rule.read}. ${heavy.caution}`,
    'This is what the published lines say to these figures. It is not legal advice: ask the State that licenses you.',
  ],
  heavy.distances[0],
  light.distances[0],
  commercial.distance,
);

assert.deepEqual([heavy.group, light.group], ['A', 'none by weight']);
assert.deepEqual([show(heavy.distances[0].value), show(light.distances[0].value)], ['1,999 lb', '-501 lb']);
assert.equal(commercial.reachesLine, true);
