/** The place that a stock question finds is as good as the best of all places at whole inches, each assessed. */
import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { assessJson } from '../../src/assessment/index.js';
import { changed as changedAll } from '../../src/study/index.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck } from '../helpers/specs.js';
import { fitStock } from '../helpers/untyped.js';
import type { Proof } from './proof.js';

const yard = (): unknown => changedAll(tiltDeck(), { 'trailer.rearLegs': '12,000 lb' });
const { tow, cargo } = tiltDeck() as unknown as { tow: unknown; cargo: readonly Record<string, unknown>[] };
const [excavator] = cargo as readonly [Record<string, unknown>];

const pounds = (least: number, most: number, step: number): fc.Arbitrary<string> =>
  fc.integer({ min: least / step, max: most / step }).map((n) => `${n * step} lb`);
const inches = (min: number, max: number): fc.Arbitrary<string> => fc.integer({ min, max }).map((n) => `${n} in`);

const front = 62;
const trailer = fc.record({
  'trailer.gvwr': pounds(11000, 14000, 500),
  'trailer.coupler.tongue': pounds(1000, 2000, 200),
  'trailer.curb.tongue': pounds(300, 700, 50),
});
const mount = pounds(1000, 2000, 100);
const uncertainty = fc.constantFrom('0 in', '2 in');

const onePiece = fc.record({
  trailer,
  mount,
  rear: fc.integer({ min: 240, max: 320 }),
  pieces: fc.tuple(
    fc.record({
      weight: pounds(5000, 10500, 100),
      length: inches(120, 180),
      balancePoint: inches(50, 80),
      uncertainty,
    }),
  ),
});
/** Two pieces with few inches to spare, so that every pair of places can be assessed. */
const twoPieces = fc.record({
  trailer,
  mount,
  rear: fc.integer({ min: 240, max: 262 }),
  pieces: fc.tuple(
    fc.record({ weight: pounds(2500, 6500, 100), length: inches(84, 110), balancePoint: inches(30, 70), uncertainty }),
    fc.record({ weight: pounds(1000, 4500, 100), length: inches(64, 90), balancePoint: inches(20, 60), uncertainty }),
  ),
});

type Piece = Readonly<Record<'weight' | 'length' | 'balancePoint' | 'uncertainty', string>>;
const lengthOf = ({ length }: Piece): number => Number.parseFloat(length);

/** Every place at whole inches from the front of the deck, pieces clear of each other. */
function placesOf(pieces: readonly Piece[], rear: number): readonly (readonly number[])[] {
  const [a, b] = pieces as readonly [Piece, Piece | undefined];
  const alongOf = (piece: Piece): readonly number[] =>
    Array.from({ length: Math.max(0, rear - front - lengthOf(piece) + 1) }, (_, k) => front + k);
  if (b === undefined) return alongOf(a).map((at) => [at]);
  return alongOf(a).flatMap((at) =>
    alongOf(b).flatMap((other) => (at + lengthOf(a) <= other || other + lengthOf(b) <= at ? [[at, other]] : [])),
  );
}

const rank = ['within', 'attention', 'unchecked', 'over'];

type Case =
  typeof onePiece extends fc.Arbitrary<infer A> ? Omit<A, 'pieces'> & { readonly pieces: readonly Piece[] } : never;

/** The best verdict of all places; asking stops where no better one is left. */
function bestOf(places: readonly (readonly number[])[], verdictAt: (fronts: readonly number[]) => string | undefined) {
  let [best, asked] = [rank.length, 0];
  for (const fronts of places) {
    if (best === 0) break;
    asked += 1;
    const verdict = verdictAt(fronts);
    if (verdict !== undefined) best = Math.min(best, rank.indexOf(verdict));
  }
  return { best, asked };
}

/** One case by both: what is found, and what all places come to; `every` above 1 asks only some of them. */
function bothWays({ trailer: changes, mount: rated, rear, pieces }: Case, every: number) {
  const spec = changedAll(yard(), { ...changes, 'trailer.deck.rear': `${rear} in` });
  const truck = changedAll(tow, { 'ballMount.tongue': rated });
  const load = pieces.map((piece, i) => ({ ...(i === 0 ? excavator : { name: 'second' }), ...piece }));
  const found = rightOf(fitStock({ stock: { it: spec }, tow: truck, cargo: load }));
  const places = placesOf(pieces, rear).filter((_, k) => k % every === 0);
  const all = bestOf(places, (fronts) => {
    const standing = load.map((piece, i) => ({ ...piece, front: `${fronts[i]} in` }));
    const there = assessJson(changedAll(spec, { tow: truck, cargo: standing }));
    return isRight(there) ? there.right.verdict : undefined;
  });
  return { one: [...found.fits, ...found.others][0], places, ...all };
}

/** Half of `cases` with one piece, half with two. `every` above 1 asks only every so many places, and then only that none is better. */
export function proveStock(cases: number, seed: number, every = 1): Proof {
  const figures = { cases: 0, 'of them with two pieces': 0, 'places assessed': 0, within: 0, 'not within': 0 };
  const against: string[] = [];
  const drawn: readonly Case[] = [
    ...fc.sample(onePiece, { numRuns: Math.ceil(cases / 2), seed }),
    ...fc.sample(twoPieces, { numRuns: Math.floor(cases / 2), seed }),
  ];
  for (const one of drawn) {
    const { one: found, places, best, asked } = bothWays(one, every);
    const its = rank.indexOf(found?.verdict ?? '');
    figures.cases += 1;
    figures['places assessed'] += asked;
    if (one.pieces.length === 2) figures['of them with two pieces'] += 1;
    figures[its === 0 ? 'within' : 'not within'] += 1;
    const tooLong = found?.reason === 'the pieces are longer than the deck';
    const isBest = every === 1 ? its === best : its <= best;
    const agrees = places.length === 0 ? tooLong : isBest;
    if (!agrees)
      against.push(`${found?.verdict} at ${found?.fronts}, and the best is ${rank[best]}: ${JSON.stringify(one)}`);
  }
  return { figures, against };
}
