/**
 * "My receiver says 20,000. Which ball do I buy, and what class must the coupler be?"
 *
 * The weakest stamping in the row is what the row is good for, gross with gross and tongue with tongue.
 */
import assert from 'node:assert/strict';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describeError, orThrow } from '../../src/errors.js';
import { couplerClass, weakestHitchPart } from '../../src/towing/index.js';
import { lb, show } from '../../src/units/index.js';
import { capacityDown, tell, trailer } from './yard.js';

const gross = orThrow(
  weakestHitchPart([
    { part: 'receiver', rating: lb(20000) },
    { part: 'ball mount', rating: lb(16000) },
    { part: 'ball', rating: lb(16000) },
    { part: 'coupler', rating: trailer.coupler.gross },
  ]),
);
const tongue = orThrow(
  weakestHitchPart([
    { part: 'receiver', rating: lb(2000) },
    { part: 'ball mount', rating: lb(1600) },
    { part: 'coupler', rating: trailer.coupler.tongue },
  ]),
);
const above = couplerClass(trailer.gvwr);
const small = orThrow(couplerClass(lb(7000)));
assert(isLeft(above));

tell(
  'Which hitch, ball and coupler?',
  [
    `This row is good for ${capacityDown(gross.limit)} gross, by the ${gross.governing.map(({ name }) => name).join(' and ')}, and ${capacityDown(tongue.limit)} on the tongue, by the ${tongue.governing.map(({ name }) => name).join(' and ')}.`,
    `A class for the TD-14: ${describeError(above.left)}. The stamping on the coupler counts, there and everywhere.`,
    `A 7,000 lb trailer takes class ${small.couplerClass}: the coupler must stand a pull of ${show(small.tension.value)} in the test, which is no load to tow with.`,
    "The class goes by the trailer's GVWR, not by what lies on it today. The ball must be of the size stamped on the coupler.",
  ],
  gross.limit,
  tongue.limit,
  small.tension,
);

assert.deepEqual([capacityDown(gross.limit), gross.governing.map(({ name }) => name)], ['15,000 lb', ['coupler']]);
assert.deepEqual(
  [capacityDown(tongue.limit), above.left.tag, small.couplerClass, show(small.tension.value)],
  ['1,600 lb', 'NotTabulated', '4', '21,000 lbf'],
);
