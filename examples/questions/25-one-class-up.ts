/**
 * "What if I buy the sixteen instead of the fourteen?"
 *
 * Both builds do the same job side by side, each with its own axles, tires, coupler and empty weight. What does not change
 * is worth reading too: the hitch on the truck may still be the limit.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { dutyOf, fitStock, oneClassUp } from '../../src/choose/index.js';
import { orThrow } from '../../src/errors.js';
import { comparisonText } from '../../src/print/index.js';
import { readJson, type SpecInput } from '../../src/spec/index.js';
import { changed } from '../../src/study/index.js';
import { capacityDown, tell } from './yard.js';

const spec = (name: string): SpecInput =>
  orThrow(readJson(readFileSync(new URL(`../${name}`, import.meta.url), 'utf8'))) as SpecInput;
const { comparison, crossed, notes } = orThrow(oneClassUp(spec('tilt-deck.json'), spec('tilt-deck-16.json')));
const [now, next] = comparison.assessments.map(({ payload: carry }) => carry?.best);
assert(now && next);
const by = ({ governing }: NonNullable<typeof now>): string => governing.map(({ name }) => name).join(' and ');

// Both stand in the yard, with legs for loading. Which takes the excavator, and how hard does a year of it work each of them?
const legs = { 'trailer.rearLegs': '10,000 lb' };
const stock = {
  fourteen: changed(spec('tilt-deck.json'), legs) as SpecInput,
  sixteen: changed(spec('tilt-deck-16.json'), legs) as SpecInput,
};
const { tow, cargo = [] } = spec('tilt-deck.json');
const { fits } = orThrow(fitStock({ stock, ...(tow && { tow }), cargo }));
const light = cargo.map((piece) => ({ ...piece, weight: '5,000 lb' }));
const trips = [
  { name: 'excavator', cargo, count: 30 },
  { name: 'small excavator', cargo: light, count: 70 },
];
const dutyBy = Object.entries(stock).map(([name, trailer]) => {
  const { share } = orThrow(dutyOf({ trailer, ...(tow && { tow }), trips }));
  return `${name} ${share.value.times(100).toFixed(0)} %`;
});

tell(
  'What changes one class up?',
  [
    `Payload goes from ${capacityDown(now.weight)}, set by ${by(now)}, to ${capacityDown(next.weight)}, set by ${by(next)}.`,
    crossed.length === 0
      ? 'No published line changes its answer between the two.'
      : `Published lines whose answer changes: ${crossed.map(({ next: { topic, outcome } }) => `${topic} (now ${outcome})`).join('; ')}.`,
    ...notes.map(({ says }) => says),
    `Each with the excavator at its own best place: ${fits.map(({ name, fronts }) => `${name}, front at ${fronts?.join()} in`).join('; ')}.`,
    `Of 100 trips, 30 with the excavator and 70 with one of 5,000 lb, these go above 90 % of some limit: ${dutyBy.join(', ')}.`,
    'The hitch on the truck stays the limit, and the bigger trailer itself weighs more: it carries less until the hitch is changed as well.',
  ],
  ...now.governing.map(({ limit }) => limit),
  ...next.governing.map(({ limit }) => limit),
);
console.log(`\nSIDE BY SIDE\n${comparisonText(comparison)}`);

assert.deepEqual(
  fits.map(({ name }) => name),
  ['fourteen', 'sixteen'],
);
assert.deepEqual([by(now), by(next)], ['ball mount tongue', 'ball mount tongue']);
assert.deepEqual([capacityDown(now.weight), capacityDown(next.weight)], ['9,683 lb', '9,153 lb']);
