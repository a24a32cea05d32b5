/** What a build is told to carry is what its own checks let it carry: loaded to it nothing is over, one pound more and something is (statics). */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { compare } from '../../../src/choose/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed } from '../../helpers/specs.js';

type Json = Readonly<Record<string, unknown>>;

const axle = (at: number, gawr: string, more: object = {}): object => ({ at: `${at} in`, gawr, ...more });
const run = (spec: Json): Assessment => rightOf(assessJson(spec));
const over = ({ checks, uplift }: Assessment): readonly string[] => [
  ...checks.flatMap(({ id, verdict }) => (verdict === 'over' ? [id] : [])),
  ...uplift.lifted.map(({ what }) => `${what} lifts`),
];
const governing = (by: { readonly governing: readonly { readonly name: string }[] } | undefined): string | undefined =>
  by?.governing.map(({ name }) => name).join();
/** The piece with its balance point here, and this heavy. */
const placed = (spec: Json, at: number, weight?: string): Json => {
  const stood = changed(changed(spec, 'cargo.0.front', undefined), 'cargo.0.at', `${at} in`);
  const bare = changed(stood, 'cargo.0.balancePoint', undefined);
  return weight === undefined ? bare : changed(bare, 'cargo.0.weight', weight);
};
const windowOf = (answer: Assessment): readonly [number, number] => {
  const { lower, upper } = answer.placement.pieces[0]!.window;
  return [plain(lower.at), plain(upper.at)];
};

describe('a deck-over of 24,000 lb with axles of 10,270 lb', () => {
  // GVWR leaves 24,000 - 8,000; the axles at 10 percent 20,540 / 0.9 - 8,000, at 15 percent more than the GVWR.
  const deckOver: Json = {
    trailer: {
      hitch: 'ball',
      gvwr: '24,000 lb',
      curb: { weight: '8,000 lb', tongue: '1,000 lb' },
      axles: [axle(280, '10,270 lb'), axle(330, '10,270 lb')],
      sharing: 'equalised',
      coupler: { gross: '25,000 lb', tongue: '3,600 lb' },
      deck: { front: '80 in', rear: '400 in' },
    },
    cargo: [{ name: 'dozer', weight: '15,800 lb', front: '180 in', balancePoint: '80 in', length: '170 in' }],
  };
  const answer = run(deckOver);
  it('is told the 16,000 lb that its best share allows, and what holds at every share beside it', () => {
    expect([plain(answer.payload!.best!.weight), governing(answer.payload?.best)]).toEqual([16000, 'GVWR']);
    expect(plain(answer.payload!.best!.shares!.from)).toBeCloseTo(1 - 20540 / 24000, 12);
    expect(Math.floor(plain(answer.payload!.anywhere!.weight))).toBe(14822);
    expect(governing(answer.payload?.anywhere)).toBe('GAWR');
  });
  it('carries a dozer of 15,800 lb in all of its window, every check within', () => {
    const [from, to] = windowOf(answer);
    expect(from).toBeLessThan(to);
    for (const at of [from + 0.001, (from + to) / 2, to - 0.001]) expect(over(run(placed(deckOver, at)))).toEqual([]);
    expect(plain(answer.placement.pieces[0]!.heaviest!.heaviest)).toBe(16000);
  });
  it('holds 16,000 lb at the places that are told with it, and no pound more', () => {
    const { from, to } = answer.payload!.best!.places!;
    const middle = (plain(from) + plain(to)) / 2;
    expect(over(run(placed(deckOver, middle, '16,000 lb')))).toEqual([]);
    expect(over(run(placed(deckOver, middle, '16,001 lb')))).toEqual(['gvwr']);
  });
  it('is compared by the same figure', () => {
    const { rows } = rightOf(compare({ now: deckOver as never, next: deckOver as never }));
    const payloads = rows.find(({ what }) => what === 'payload')?.figures.map((figure) => figure && plain(figure));
    expect(payloads).toEqual([16000, 16000]);
  });
});

describe('a light trailer that its label lets carry 5,100 lb', () => {
  const light: Json = {
    trailer: {
      hitch: 'ball',
      gvwr: '7,000 lb',
      curb: { weight: '1,900 lb', tongue: '220 lb' },
      axles: [axle(140, '3,500 lb'), axle(174, '3,500 lb')],
      sharing: 'equalised',
      deck: { front: '60 in', rear: '252 in' },
    },
    cargo: [{ name: 'loader', weight: '3,000 lb', front: '95 in', balancePoint: '45 in', length: '110 in' }],
  };
  const chains = { each: '5,000 lb', count: 2 };
  const ramps = { length: '60 in', height: '20 in', rating: '4,000 lb', basis: 'machine' };
  it.each([
    ['with neither told', {}, 5100, 'GVWR', 'gvwr'],
    ['by chains of 5,000 lb each', { chains }, 3100, 'safety chains each', 'chains@each'],
    ['by ramps of 4,000 lb', { ramps }, 4000, 'ramps', 'ramps/machine'],
    ['by both', { chains, ramps }, 3100, 'safety chains each', 'chains@each'],
  ])('%s', (_, gear, pounds, by, id) => {
    const spec = { ...light, trailer: { ...(light['trailer'] as object), ...gear } };
    const { payload, placement } = run(spec);
    expect([plain(payload!.best!.weight), governing(payload?.best)]).toEqual([pounds, by]);
    expect(plain(payload!.anywhere!.weight)).toBe(pounds);
    expect(plain(placement.pieces[0]!.heaviest!.heaviest)).toBe(pounds);
    const at = plain(payload!.best!.places!.from) + 0.001;
    expect(over(run(placed(spec, at, `${pounds} lb`)))).toEqual([]);
    expect(over(run(placed(spec, at, `${pounds + 1} lb`)))).toContain(id);
  });
});

describe('a triple whose axle 3 is the weakest and the stiffest', () => {
  const triple: Json = {
    trailer: {
      hitch: 'ball',
      gvwr: '21,000 lb',
      curb: { weight: '5,000 lb', tongue: '700 lb' },
      axles: [
        axle(200, '7,000 lb', { rate: '2000 lb/in' }),
        axle(235, '7,000 lb', { rate: '2000 lb/in' }),
        axle(270, '5,200 lb', { rate: '2600 lb/in' }),
      ],
      sharing: 'independent',
      ballAboveLevel: '1 in',
      coupler: { gross: '21,000 lb', tongue: '3,000 lb' },
      deck: { front: '60 in', rear: '360 in' },
    },
    cargo: [{ name: 'dozer', weight: '9,400 lb', front: '130 in', balancePoint: '70 in', length: '150 in' }],
  };
  const answer = run(triple);
  it('has no axle over anywhere in its window, off level either', () => {
    const [from, to] = windowOf(answer);
    expect(from).toBeLessThan(to);
    for (const at of [from + 0.001, (from + to) / 2, to - 0.001]) expect(over(run(placed(triple, at)))).toEqual([]);
    expect(over(run(placed(triple, to + 0.1))).join()).toMatch(/axle-3/);
  });
  it('is told by axle 3 what it carries, in the one way of standing that loads it most', () => {
    expect(governing(answer.payload?.anywhere)).toMatch(/^axle 3/);
    expect(governing(answer.payload?.best)).toMatch(/^axle 3/);
  });
});
