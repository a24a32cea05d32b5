/** Grids of round numbers, seeded: rows are exactly at limits, and checks tie. All figures are invented. */
import { type Levels, levels } from '../../../src/study/index.js';
import { uniformAt } from '../../../src/study/plan/chance.js';
import { tiltDeck, wholeDeck } from '../../study/compared.js';

/** A spec and the levels of some of its figures. */
export interface RoundDesign {
  readonly base: unknown;
  readonly vary: Readonly<Record<string, Levels>>;
}

/** Whole steps from a first figure: `[path, unit, first, step, how many there are]`. */
type Steps = readonly [path: string, unit: string, first: number, step: number, count: number];

const plain: readonly Steps[] = [
  ['cargo.0.weight', 'lb', 5000, 250, 29],
  ['cargo.0.at', 'in', 150, 6, 11],
  ['trailer.gvwr', 'lb', 10_000, 500, 11],
  ['trailer.coupler.gross', 'lb', 10_000, 500, 11],
  ['trailer.coupler.tongue', 'lb', 500, 100, 16],
  ['trailer.curb.weight', 'lb', 2000, 250, 9],
  ['trailer.curb.tongue', 'lb', 0, 100, 8],
  ['trailer.axles.0.gawr', 'lb', 5000, 250, 13],
  ['trailer.axles.1.gawr', 'lb', 5000, 250, 13],
  ['trailer.axles.0.tires.molded.single', 'lb', 2500, 125, 9],
];

const whole: readonly Steps[] = [
  ['cargo.0.weight', 'lb', 6000, 500, 13],
  ['cargo.0.front', 'in', 104, 6, 6],
  ['trailer.gvwr', 'lb', 13_000, 500, 5],
  ['trailer.coupler.tongue', 'lb', 1000, 250, 7],
  ['tow.receiver.tongue', 'lb', 1000, 250, 5],
  ['tow.gvwr', 'lb', 10_000, 500, 5],
  ['tow.ball.gross', 'lb', 12_000, 1000, 5],
  ['trailer.axles.0.gawr', 'lb', 6000, 500, 5],
];

/** A trailer whose figures are all round: two axles about 198 in, a machine placed by its balance point. */
export const roundDeck = {
  ...tiltDeck,
  trailer: {
    ...tiltDeck.trailer,
    gvwr: '12,000 lb',
    curb: { weight: '3,000 lb', tongue: '300 lb' },
    coupler: { gross: '12,000 lb', tongue: '1,200 lb' },
    axles: tiltDeck.trailer.axles.map((axle, i) => ({
      ...axle,
      at: ['181 in', '215 in'][i],
      gawr: '6,000 lb',
      beam: '7,000 lb',
      springs: '7,000 lb',
      hubs: '7,000 lb',
      wheels: { each: '4,000 lb', count: 2 },
      brakes: { left: '4,000 lb', right: '4,000 lb' },
      tires: { designation: 'ST235/80R16 LRE', count: 2, fitment: 'single', molded: { single: '3,500 lb' } },
    })),
  },
  cargo: [{ name: 'machine', weight: '8,000 lb', at: '176 in' }],
  tongueShare: undefined,
};

/** So many of the figures, each with some of its levels in their order. */
function drawn(steps: readonly Steps[], seed: number, n: number, paths: number, most: number): RoundDesign['vary'] {
  const order = steps
    .map((step, k) => ({ step, key: uniformAt(seed, n, k) }))
    .sort((a, b) => a.key - b.key)
    .slice(0, paths);
  return Object.fromEntries(
    order.map(({ step: [path, unit, first, size, count] }, k) => {
      const take = Math.min(most, count);
      const from = Math.floor(uniformAt(seed, n, 50 + k) * (count - take + 1));
      return [path, levels(...Array.from({ length: take }, (_, i) => `${first + (from + i) * size} ${unit}`))];
    }),
  );
}

/** The n-th design over the round trailer. */
export const plainDesign = (seed: number, n: number, paths = 4, most = 8): RoundDesign => ({
  base: roundDeck,
  vary: drawn(plain, seed, n, paths, most),
});

/** The n-th design over the whole example: tow vehicle, deck, tiedowns, ramps, rules. */
export const wholeDesign = (seed: number, n: number, paths = 3, most = 6): RoundDesign => ({
  base: wholeDeck,
  vary: drawn(whole, seed, n, paths, most),
});
