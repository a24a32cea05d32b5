/** A machine on its line just keeps the limit: the loads are worked out by plain moments about the coupler, in doubles. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LadenLimit } from '../../../src/load/balance/laden-limit.js';
import { guideline } from '../../../src/load/index.js';
import { linesOf } from '../../../src/load/placement/limit-lines.js';
import type { TrailerForPlacing } from '../../../src/load/placement/limits.js';
import { commonPractice, constant, given } from '../../../src/trace/index.js';
import { inch, lb, percent, ratio } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const [axlesAt, empty, tongueEmpty] = [200, 3000, 400];
const machine = { length: inch(120), balancePoint: inch(50), uncertainty: inch(0) };
const trailer: Omit<TrailerForPlacing, 'limits'> = {
  items: [{ name: 'trailer', weight: lb(empty), tongue: lb(tongueEmpty) }],
  axlesAt: inch(axlesAt),
  deck: { front: inch(40), rear: inch(280) },
  guideline: 'no guideline',
  tongueLimits: [],
  axleLimits: [],
};
const linesFor = (limits: readonly LadenLimit[]) => rightOf(linesOf({ ...trailer, limits }, machine));
const axles = (pounds: number): LadenLimit => ({
  name: 'axle 1',
  on: 'axles',
  limit: given('axle 1', lb(pounds), 'label'),
});
const thousandths = (part: number) => constant(ratio(`${part / 1000}`));

describe('the line of a limit', () => {
  it('is where the axles carry just their limit: bars that return a part, a side that carries more', () => {
    const part = fc.option(fc.integer({ min: 1, max: 400 }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.integer({ min: 4000, max: 16_000 }),
        fc.integer({ min: 1000, max: 12_000 }),
        part,
        part,
        (figure, weight, k, q) => {
          const limit = {
            ...axles(figure),
            returned: k === undefined ? undefined : thousandths(k),
            lean: q === undefined ? undefined : thousandths(q),
          };
          const line = linesFor([limit]).limits.find(({ name }) => name === 'axle 1');
          if (line === undefined) throw new Error('no line');
          const at = plain(line.base) + plain(line.moment) / weight;
          const tongue = tongueEmpty + (weight * (axlesAt - at)) / axlesAt;
          const carried = empty + weight - tongue * (1 - (k ?? 0) / 1000) + ((q ?? 0) / 1000) * weight;
          expect(carried / figure).toBeCloseTo(1, 8);
          expectReplays(line.base, line.moment);
        },
      ),
      { numRuns: 100, seed: 9 },
    );
  });
  it('is the same beside others that stand another way: returned, leaning, both', () => {
    const ways: readonly Partial<LadenLimit>[] = [
      {},
      { returned: thousandths(100) },
      { lean: thousandths(50) },
      { returned: thousandths(100), lean: thousandths(50) },
      { returned: thousandths(100), lean: thousandths(80) },
      { returned: thousandths(200), lean: thousandths(50) },
    ];
    const limits = ways.map((way, i): LadenLimit => ({ ...axles(9000), ...way, name: `axle ${i + 1}` }));
    const linesOn = (some: readonly LadenLimit[]) =>
      linesFor(some)
        .limits.filter(({ by }) => by === 'weight')
        .map(({ name, base, moment }) => [name, plain(base), plain(moment)]);
    const alone = limits.flatMap((limit) => linesOn([limit]));
    expect(linesOn(limits)).toEqual(alone);
    expect(new Set(alone.map(([, base]) => base)).size).toBe(ways.length);
  });
  it('bounds the rear for the axles and the front for the tongue, and the other end for what must press', () => {
    const tongue: LadenLimit = { name: 'tongue', on: 'tongue', limit: given('tongue', lb(900), 'label') };
    const ends = (limits: readonly LadenLimit[]): string[] =>
      linesFor(limits)
        .limits.filter(({ by }) => by === 'weight')
        .map(({ name, end }) => `${name} ${end}`);
    expect(ends([axles(9000), tongue])).toEqual(['axle 1 rear', 'tongue front']);
    expect(
      ends([
        { ...axles(0), atLeast: true },
        { ...tongue, atLeast: true },
      ]),
    ).toEqual(['axle 1 front', 'tongue rear']);
  });
  it('takes a balance point anywhere from the front of the machine to its rear', () => {
    const at = (balancePoint: string) =>
      linesOf({ ...trailer, limits: [axles(9000)] }, { ...machine, balancePoint: inch(balancePoint) })._tag;
    expect(['0', '0.5', '120'].map(at)).toEqual(['Right', 'Right', 'Right']);
    expect(['-0.1', '120.1'].map(at)).toEqual(['Left', 'Left']);
  });
  it('hands on what the guideline was read by', () => {
    const band = rightOf(guideline(percent(10), percent(15), commonPractice));
    const { decisions } = rightOf(linesOf({ ...trailer, guideline: band }, machine));
    expect(band.decisions.length).toBeGreaterThan(0);
    expect(decisions).toEqual(expect.arrayContaining([...band.decisions]));
  });
  it('is none for what does not depend on the place: that limits the weight', () => {
    const on = (name: 'gross' | 'payload'): LadenLimit => ({ name, on: name, limit: given(name, lb(9000), 'label') });
    const { limits, weights } = linesFor([
      on('gross'),
      on('payload'),
      { ...on('gross'), name: 'presses', atLeast: true },
    ]);
    expect(limits.map(({ by }) => by)).toEqual(['deck', 'deck']);
    expect(weights.map(({ name, limit }) => [name, plain(limit)])).toEqual([
      ['gross', 6000],
      ['payload', 9000],
    ]);
  });
});
