/** The empty trailer of a random spec: weighed, built up from items, or from a cut list and a deck. */
import type { Plan } from './plan.js';

const woods = [
  { by: 'NDS gravity', species: 'Southern Pine', moisture: '19 %' },
  { by: 'treated', state: 'treated, dried', end: 'high' },
  { by: 'density', density: '35 lb/ft3' },
] as const;

const surfaces = [
  { floorPlate: '1/8' },
  { plate: { thickness: '3/16 in', material: 'steel' } },
  { weightPerSquareFoot: '4.75 lb/ft2' },
] as const;

/** Cut lists are written in inches here. */
const inches = (whole: number): string => `${whole} in`;

const rails = ['C6X8.2', 'C8X11.5', 'C6X10.5', 'C5X6.7', 'HSS4X2X3/16'] as const;
const crossmembers = ['C3X4.1', 'C3X3.5', 'L3X2X1/4'] as const;

function frameOf({ chance, deck }: Plan): readonly object[] {
  const run = deck.rear - deck.front;
  const bar = { flatBar: { thickness: '1/2 in', width: '4 in', material: 'steel' } };
  return [
    {
      name: 'main rails',
      member: chance.pick(rails),
      length: inches(deck.rear - 4),
      count: 2,
      from: inches(4),
    },
    {
      name: 'crossmembers',
      member: chance.pick(crossmembers),
      length: '82 in',
      spacing: chance.pick(['16 in', '24 in', '12 in']),
      over: inches(run),
      from: inches(deck.front),
      rule: chance.pick(['first at the start, last at the end', 'first at the start', 'none at either end']),
    },
    { name: 'stop bar', member: bar, length: '80 in', count: '1', at: inches(deck.front) },
    ...(chance.happens(40) ? [{ name: 'winch', weight: '95 lb', at: inches(deck.front - 10) }] : []),
  ];
}

function deckOf({ chance, deck }: Plan): readonly object[] {
  const surface = chance.happens(60) ? { boards: { size: '2x8', wood: chance.pick(woods) } } : chance.pick(surfaces);
  const [length, from] = [inches(deck.rear - deck.front), inches(deck.front)];
  return [{ name: 'deck', length, width: chance.pick(['82 in', '96 in', '83 in']), from, surface }];
}

function itemsOf({ chance, write, curb, axles, axlesAt, deck }: Plan, share: number): readonly object[] {
  const weight = (percent: number): unknown => write.weight(Math.round((curb * share * percent) / 100));
  return [
    { name: 'coupler and tongue', weight: weight(12), at: write.length(20) },
    {
      name: 'axles',
      weight: write.weight(Math.round((curb * share * 0.3) / axles)),
      at: write.length(axlesAt),
      count: axles,
    },
    { name: 'fenders and tail', weight: weight(18), at: write.length(axlesAt + 30) },
    ...(chance.happens(50) ? [{ name: 'toolbox', weight: '60 lb', at: write.length(deck.front - 12) }] : []),
  ];
}

const lever = {
  reading: { text: '180 lb', basis: 'scale' },
  beamTare: '20 lb',
  pipeToTongue: '12 in',
  tongueToScale: '24 in',
} as const;

/** One of the ways in which people know their empty trailer. */
export function curbOf(plan: Plan): object {
  const { chance, write, curb, emptyTongue } = plan;
  const weighed = { weight: write.weight(curb), tongue: write.weight(emptyTongue) };
  const built = { frame: frameOf(plan), ...chance.maybe(80, 'deck', () => deckOf(plan)), items: itemsOf(plan, 0.5) };
  const grows = 'deck' in built && chance.happens(60) ? { grows: ['main rails', 'crossmembers', 'deck'] } : {};
  const way = plan.ties ? 0 : chance.whole(0, 9);
  if (way < 5) return weighed;
  if (way === 5) return { weight: write.weight(curb) };
  if (way === 6) return { weight: write.weight(curb), tongueByLever: lever };
  if (way === 7) return { items: itemsOf(plan, 1.4) };
  if (way === 8) return { ...built, ...grows };
  return { ...weighed, ...built, ...grows, tolerance: chance.pick(['2 %', '5 %']) };
}
