/**
 * "I have the one-ton here and your TD-14 with my excavator on it. The brochure says my truck tows 18,000. So I am fine?"
 *
 * The brochure figure is one of many: every rating on the tow side is asked, and the one with the least left is named.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { tightest } from '../../src/ratings/index.js';
import { towChecks } from '../../src/towing/index.js';
import { capacityDown, loaded, loadUp, tell, trailer, yardTruck } from './yard.js';

const { checks, notChecked, combination } = orThrow(
  towChecks(yardTruck, {
    gross: loaded.gross,
    tongue: loaded.tongue,
    coupler: trailer.coupler,
    chains: trailer.chains,
  }),
);
const over = checks.filter(({ verdict }) => verdict === 'over');
const closest = tightest(checks);

tell(
  'Can my truck pull it?',
  [
    over.length === 0 && notChecked.length === 0
      ? `None of the ${checks.length} tow-side ratings is exceeded, and none was left unasked.`
      : `${over.length} ratings are exceeded and ${notChecked.length} could not be asked.`,
    ...checks.map(
      ({ what, load, limit, reserve }) =>
        `- ${what}: ${loadUp(load)} of ${capacityDown(limit)}, ${capacityDown(reserve)} left`,
    ),
    `Closest to its limit: ${closest.map(({ what }) => what).join(' and ')}. The brochure's 18,000 lb is not what gives out first.`,
    "This is the tow side only. The trailer's own GVWR, axles and tires are separate questions, and so is the law.",
  ],
  ...closest.map(({ reserve }) => reserve),
  ...(combination === undefined ? [] : [combination]),
);

assert.deepEqual([over.length, notChecked.length], [0, 0]);
assert.deepEqual(
  closest.map(({ what, reserve }) => [what, capacityDown(reserve)]),
  [['tongue against ball mount tongue', '109 lb']],
);
assert.equal(combination && loadUp(combination), '21,510 lb');
