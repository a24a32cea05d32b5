/**
 * "Two seven-thousand axles. Is that a 14,000 trailer or a 15,400 one?"
 *
 * The label says what it is; axles never make a GVWR. What can be asked is whether the axles bear a labelled GVWR at the
 * tongue share it will have, because part of the trailer rests on the truck.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { type CoupledAxleLoad, coupledAxleLoad } from '../../src/rules/index.js';
import { sum } from '../../src/trace/index.js';
import { lb, percent, show } from '../../src/units/index.js';
import { capacityDown, loadUp, tell, trailer } from './yard.js';

const sumOfGawrs = sum('sum of GAWRs', trailer.gawrs);
const at = (gvwr: number, tongue: number): CoupledAxleLoad =>
  orThrow(coupledAxleLoad({ gvwr: lb(gvwr), tongueShare: percent(tongue), sumOfGawrs }));
const cases = (
  [
    [14000, 10],
    [15400, 10],
    [15400, 9],
  ] as const
).map(([gvwr, tongue]) => ({ gvwr, tongue, asked: at(gvwr, tongue) }));
const [yard, ten, nine] = cases.map(({ asked }) => asked);
assert(yard && ten && nine);

tell(
  'Two 7,000 lb axles: 14,000 or 15,400?',
  [
    "The certification label answers that: the GVWR is the maker's, and a sum of axles neither makes it nor raises it.",
    ...cases.map(
      ({ gvwr, tongue, asked }) =>
        `- labelled ${show(lb(gvwr))}, ${tongue} % on the tongue: the axles carry ${loadUp(asked.axleLoad)} of ${capacityDown(asked.check.limit)}: ${asked.check.verdict}`,
    ),
    "A trailer may lawfully have axles that add up to less than its GVWR, as the agency's trailer letters read; then the tongue share may not fall below a floor at any loading, here 1 - 14,000/15,400 = 9.09 %.",
    'Letters about other vehicles say otherwise; both kinds are in the rules chapter.',
  ],
  nine.axleLoad,
  nine.check.reserve,
);

assert.deepEqual(
  cases.map(({ asked }) => [loadUp(asked.axleLoad), asked.check.verdict]),
  [
    ['12,600 lb', 'within'],
    ['13,860 lb', 'within'],
    ['14,014 lb', 'over'],
  ],
);
