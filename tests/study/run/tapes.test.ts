/** The recordings of a study: each made once, and the ways of an alternative in the order in which they are worth trying. */
import { describe, expect, it } from 'vitest';
import { alternatives, levels } from '../../../src/study/index.js';
import { readPlan } from '../../../src/study/plan/read-plan.js';
import { standardMeasure } from '../../../src/study/run/measure.js';
import { tapesFor, type Way } from '../../../src/study/run/tapes.js';
import { rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../compared.js';

const plan = rightOf(
  readPlan(tiltDeck as never, {
    coupler: alternatives({ as: {}, small: { 'trailer.coupler.tongue': '900 lb' } }),
    label: alternatives({ as: {}, mid: { 'trailer.gvwr': '13,000 lb' }, low: { 'trailer.gvwr': '12,000 lb' } }),
    'cargo.0.weight': levels('8,000 lb', '9,000 lb'),
  }),
);
const made = tapesFor(plan, standardMeasure);
const reserve = (way: { readonly kind: string }, name: string): number | undefined =>
  (way as Extract<Way, { kind: 'answered' }>).figures
    .find((figure) => figure.name === name)
    ?.node.value.value.toNumber();

describe('recordings', () => {
  it('are one of each combination, the last choice fastest', () => {
    const all = made.all();
    expect(all.map((way) => reserve(way, 'left: gross against GVWR'))).toEqual([1350, 350, -650, 1350, 350, -650]);
    const tongue = all.map((way) => reserve(way, 'left: tongue against coupler tongue') as number);
    expect(tongue.map((x) => x === tongue[0])).toEqual([true, true, true, false, false, false]);
  });
  it('are kept: the same combination is the same recording', () => {
    expect(made.first([1, 2])).toBe(made.all()[5]);
    expect(made.otherWays([0, 1])).toBe(made.otherWays([0, 1]));
    expect(made.otherWays([0, 1])).not.toBe(made.otherWays([1, 0]));
  });
  it('of the last row asked are what assess said of it', () => {
    const spec = plan.specOf([0, 0]);
    made.record(spec);
    const said = made.assessed(spec);
    expect(made.assessed(spec)).toBe(said);
    expect(made.assessed({ ...(spec as object) })).not.toBe(said);
  });
});

describe('the ways of an alternative', () => {
  const way = (name: string): Way => ({ kind: 'refused', reason: name }) as unknown as Way;
  const [a, b, c] = [way('a'), way('b'), way('c')];
  const ways = () => tapesFor(plan, standardMeasure).otherWays([0, 0]);
  it('are tried in the order of the rows they answered so far', () => {
    const known = ways();
    expect(known.known()).toEqual([]);
    known.answered(a, 5);
    known.answered(b, 7);
    known.answered(c, 1);
    expect(known.known()).toEqual([b, a, c]);
    known.answered(a, 3);
    expect(known.known()).toEqual([a, b, c]);
  });
  it('begin with the one that answered most of the block before; of none after a block of none', () => {
    const known = ways();
    expect(known.begin()).toBeUndefined();
    known.answered(a, 5);
    known.answered(b, 3);
    known.answered(b, 3);
    expect(known.begin()).toBe(b);
    known.answered(a, 1);
    expect(known.begin()).toBe(a);
    known.answered(a, 0);
    expect(known.begin()).toBeUndefined();
  });
  it('lead on from where a row left them', () => {
    const known = ways();
    known.leads(a, 3, b);
    known.leads(a, 4, c);
    known.leads(b, 3, a);
    expect([known.after(a, 3), known.after(a, 4), known.after(b, 3), known.after(b, 4), known.after(c, 3)]).toEqual([
      b,
      c,
      a,
      undefined,
      undefined,
    ]);
    known.leads(a, 3, c);
    expect(known.after(a, 3)).toBe(c);
  });
  it('are four hundred beside the first', () => {
    const known = ways();
    for (let i = 0; i < 400; i += 1) known.answered(way(`${i}`), 1);
    expect(known.record({})).toMatchObject({ kind: 'unreadable' });
    known.answered(a, 1);
    expect(known.record({})).toBe('no more');
  });
});
