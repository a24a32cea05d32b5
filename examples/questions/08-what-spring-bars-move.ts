/**
 * "I bought a weight distributing hitch. Does that make the trailer lighter?"
 *
 * No. It moves load from the rear axle to the front axle and to the trailer's own axles; the three changes sum to nothing.
 */
import assert from 'node:assert/strict';
import { orThrow } from '../../src/errors.js';
import { weightDistribution } from '../../src/towing/index.js';
import { percent } from '../../src/units/index.js';
import { loadUp, pickup, share, smallTrailer, tell } from './yard.js';

const wd = orThrow(
  weightDistribution({
    ...pickup,
    ...smallTrailer,
    bars: { restore: percent(50) },
    ratings: { front: pickup.frontGawr, rear: pickup.rearGawr, trailerAxles: smallTrailer.axleGroup },
  }),
);
const { barsOff, barsOn, findings, restored } = wd;
assert(restored);

tell(
  'What does the weight distributing hitch move?',
  [
    `Set to give back ${share(restored)} of what the front axle lost:`,
    `- front axle ${loadUp(barsOff.front)} becomes ${loadUp(barsOn.front)}`,
    `- rear axle ${loadUp(barsOff.rear)} becomes ${loadUp(barsOn.rear)}`,
    `- trailer axles ${loadUp(barsOff.trailerAxles)} become ${loadUp(barsOn.trailerAxles)}`,
    'Neither the trailer nor the combination weighs a pound less. The rear axle is judged with the bars off, because no rating is left to the bars to keep:',
    ...[...findings.barsOff.checks, ...findings.barsOn.checks].map(({ what, verdict }) => `- ${what}: ${verdict}`),
    'Bars are for trucks, receivers and trailer frames whose makers allow them.',
  ],
  wd.moment,
  barsOn.front,
  barsOn.rear,
  barsOn.trailerAxles,
);

assert.deepEqual(
  [loadUp(barsOn.front), loadUp(barsOn.rear), loadUp(barsOn.trailerAxles)],
  ['2,987 lb', '3,556 lb', '6,658 lb'],
);
assert.deepEqual(
  findings.barsOff.checks.filter(({ verdict }) => verdict === 'over').map(({ kind }) => kind),
  ['tow vehicle rear GAWR'],
);
