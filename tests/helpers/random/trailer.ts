/** The trailer of a random spec. */
import { axlesOf, sharingOf } from './axles.js';
import { curbOf } from './empty-trailer.js';
import type { Plan } from './plan.js';
import { ratingFor } from './plan.js';

function rampsOf(plan: Plan): object {
  const { chance, write, pieces } = plan;
  const heaviest = pieces.reduce((most, { weight }) => Math.max(most, weight), 2000);
  return {
    length: write.length(chance.whole(54, 96, 6)),
    height: write.length(chance.whole(18, 36)),
    ...chance.maybe(plan.detail, 'rating', () => write.weight(ratingFor(plan, heaviest, 100))),
    ...chance.maybe(plan.detail, 'basis', () => chance.pick(['machine', 'axle'])),
    ...chance.maybe(35, 'setting', () => ({ width: '15 in', margin: '1 in', closest: '2 in', widest: '70 in' })),
    ...chance.maybe(30, 'dovetail', () => ({
      angle: `${chance.whole(8, 15)} deg`,
      length: write.length(chance.whole(24, 60, 12)),
    })),
  };
}

function couplerOf(plan: Plan): object {
  const { chance, write, gross, tongue, detail } = plan;
  return {
    ...chance.maybe(detail, 'gross', () => write.weight(ratingFor(plan, gross, 500))),
    ...chance.maybe(detail, 'tongue', () => write.weight(ratingFor(plan, tongue, 50))),
  };
}

/** The trailer: its label, its gear and its sizes, each told or not. */
export function trailerOf(plan: Plan): object {
  const { chance, write, detail, deck, gross, tongue, gooseneck } = plan;
  const { axles, ...sharing } = sharingOf(plan, axlesOf(plan));
  return {
    hitch: gooseneck ? 'gooseneck' : 'ball',
    ...chance.maybe(90, 'gvwr', () => write.weight(ratingFor(plan, gross, 500))),
    axles,
    ...sharing,
    ...chance.maybe(95, 'curb', () => curbOf(plan)),
    ...chance.maybe(detail, 'coupler', () => couplerOf(plan)),
    ...chance.maybe(detail, 'chains', () => ({
      each: write.weight(ratingFor(plan, gross, 100)),
      count: chance.pick([1, 2, 2, 2]),
    })),
    ...chance.maybe(detail * 0.6, 'jack', () => ({
      rating: write.weight(ratingFor(plan, tongue, 500)),
      at: write.length(chance.whole(14, 30)),
      margin: chance.pick(['125 %', '150 %', '100 %']),
    })),
    ...chance.maybe(Math.max(detail, 60), 'deck', () => ({
      front: write.length(deck.front),
      rear: write.length(deck.rear),
    })),
    ...chance.maybe(detail * 0.7, 'ramps', () => rampsOf(plan)),
    ...chance.maybe(detail * 0.7, 'width', () => chance.pick(['96 in', '102 in', '8.5 ft', '2.6 m'])),
    ...chance.maybe(detail * 0.7, 'length', () => write.length(deck.rear + 12)),
    ...chance.maybe(25, 'guideline', () => ({
      low: gooseneck ? '18 %' : '9 %',
      high: gooseneck ? '25 %' : '14 %',
      source: 'shop habit',
    })),
    ...chance.maybe(detail * 0.7, 'track', () => write.length(chance.whole(72, 96))),
    ...chance.maybe(30, 'ballAboveLevel', () => write.length(chance.whole(-6, 6))),
  };
}
