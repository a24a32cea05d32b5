/**
 * "Where do I park the excavator?"
 *
 * Between the place where some tongue rating is full and the place where the tongue gets too light, as long as the deck
 * reaches and the axles bear it.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { assess } from '../../src/assessment/index.js';
import { remedies, sureness } from '../../src/choose/index.js';
import { orThrow } from '../../src/errors.js';
import { guidelineFor, heaviestMachine, placementWindow, type TrailerForPlacing } from '../../src/load/index.js';
import { remedyItems, surenessText } from '../../src/print/index.js';
import { rating } from '../../src/ratings/index.js';
import { readJson, type SpecInput } from '../../src/spec/index.js';
import { changed } from '../../src/study/index.js';
import { inch, lb, roundCapacityDown, roundLoadUp, showBrief, showFeetInches } from '../../src/units/index.js';
import { capacityDown, emptyTrailer, excavator, inches, loadUp, tell, trailer } from './yard.js';

const deck: TrailerForPlacing = {
  items: [emptyTrailer],
  axlesAt: trailer.axlesAt,
  deck: trailer.deck,
  guideline: guidelineFor('ball'),
  tongueLimits: [rating('coupler tongue', trailer.coupler.tongue), rating('ball mount tongue', lb(1600))],
  axleLimits: [rating('axle group', lb(14000))],
};
const { lower, upper, width, sure, poundsPerInch, tongueUncertainty } = orThrow(placementWindow(deck, excavator));
const heaviest = orThrow(heaviestMachine(deck, excavator));
const by = (end: { readonly setBy: readonly { readonly name: string }[] }): string =>
  end.setBy.map(({ name }) => name).join(' and ');

// Both ends are printed inward, so that what the tape shows is inside the window.
const [from, to] = [
  roundLoadUp(lower.machineFront.value, inch('0.25')),
  roundCapacityDown(upper.machineFront.value, inch('0.25')),
];

// The same rig as a spec: what puts it right when it was parked too far forward, and how sure the answer is where it belongs.
const spec = orThrow(readJson(readFileSync(new URL('../tilt-deck.json', import.meta.url), 'utf8'))) as SpecInput;
const onLegs = changed(spec, { 'trailer.rearLegs': '10,000 lb' }) as SpecInput;
const parked = orThrow(remedies(changed(onLegs, { 'cargo.0.front': '100 in' }) as SpecInput, ['move', 'unload']));
const howSure = surenessText(orThrow(sureness(orThrow(assess(onLegs))))).split('\n');

tell(
  'Where do I put the machine?',
  [
    `Its front between ${showFeetInches(from, 4)} and ${showFeetInches(to, 4)} behind the coupler: a window of ${inches(width)}.`,
    `Forward the end is set by ${by(lower)} (tongue ${loadUp(lower.tongue)}), back by ${by(upper)} (tongue ${loadUp(upper.tongue)}).`,
    `Forward the tongue gains ${showBrief(poundsPerInch.value, 1)}. The balance point is known to 2 in, worth ${loadUp(tongueUncertainty)} either way; the window that holds for certain is ${inches(sure.width)} wide.`,
    `The heaviest machine of this shape that has a place at all weighs ${capacityDown(heaviest.heaviest)}; GVWR is another question.`,
    ...remedyItems(parked).map(({ says }) => `Parked with its front at 100 in? ${says}.`),
    'How sure is that? A stated weight is good to 3 %, a place to an inch:',
    ...howSure,
  ],
  lower.machineFront,
  upper.machineFront,
  width,
);

assert.deepEqual([inches(lower.at), inches(upper.at), inches(width)], ['179.5 in', '187.1 in', '7.6 in']);
assert.deepEqual([showFeetInches(from, 4), showFeetInches(to, 4)], ['9\' 11 3/4"', '10\' 7"']);
assert.equal(parked.single.length, 1);
assert.match(howSure.join(' '), /not sure: tongue against ball mount tongue/);
assert.deepEqual([by(lower), by(upper)], ['ball mount tongue', 'guideline low']);
