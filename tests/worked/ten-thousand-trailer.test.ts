/** What the trade says of its 10,000 lb trailers. Common practice, no source, save where a table is named. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { axleGroup, axleSystem } from '../../src/axles/index.js';
import { payload, payloadClaim } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { loadRange, rangePressure, tireLoadRating } from '../../src/tires/index.js';
import { constant, given, product, sum } from '../../src/trace/index.js';
import { inch, lb, ratio, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { workingsIn } from '../helpers/specs.js';
import { twoAxles } from '../helpers/ten-thousand.js';
import { expectReplays } from '../helpers/working.js';

const curb = given('curb weight', lb(2450), 'scale');
const fifteen = constant(ratio('0.15'));
const share = { low: fifteen, high: fifteen };
const gvwr = rating('GVWR', given('GVWR', lb(10000), 'label'));

describe('common practice, no source', () => {
  it('load range D is an 8-ply rating, and 65 psi in the 15 in trailer sizes', () => {
    expect(rightOf(loadRange('D')).plyRating).toBe(8);
    for (const size of ['ST205/75R15 LRD', 'ST225/75R15 LRD']) {
      const { pressure } = rightOf(rangePressure('ST-metric', 'D', size));
      expectReplays(pressure);
      expect(show(pressure.value)).toBe('65 psi');
    }
  });
  it('two 5,200 lb axles carry 10,400 lb, under a 10,000 lb label or any other', () => {
    const axle = (of: string, at: number) => ({
      system: rightOf(axleSystem({ gawr: lb(5200) }, of)),
      at: given(of, inch(at)),
    });
    const group = rightOf(axleGroup([axle('axle 1', 180), axle('axle 2', 214)], 'equalised'));
    expectReplays(...workingsIn(group));
    expect([show(group.capacity.value), show(group.sumOfRatings.value)]).toEqual(['10,400 lb', '10,400 lb']);
  });
  it('at 2,450 lb empty it carries 7,550 lb, by the label and not by the axles', () => {
    const { payload: carry, ...rest } = rightOf(assessJson(twoAxles({ gawr: '5,200 lb' })));
    expectReplays(...workingsIn({ carry, ...rest }));
    expect([show(carry?.anywhere?.weight.value ?? lb(0)), carry?.anywhere?.governing.map(({ name }) => name)]).toEqual([
      '7,550 lb',
      ['GVWR'],
    ]);
  });
  it('15 percent of 10,000 lb is a tongue load of 1,500 lb', () => {
    const tongue = product('tongue load', gvwr.limit, fifteen);
    expectReplays(tongue);
    expect(show(tongue.value)).toBe('1,500 lb');
  });
  it('adding that to the payload claims about 9,000 lb; loaded, it is 1,500 lb over the label, and the check says so', () => {
    const claim = payloadClaim(curb, fifteen, gvwr);
    expectReplays(...workingsIn(claim));
    expect([
      show(claim.claimed.value),
      show(claim.gross.value),
      claim.check.verdict,
      show(claim.check.reserve.value),
    ]).toEqual(['9,050 lb', '11,500 lb', 'over', '-1,500 lb']);
    expect(
      show(rightOf(payload(curb, share, [{ name: 'GVWR', on: 'gross', limit: gvwr.limit }])).anywhere!.weight.value),
    ).toBe('7,550 lb');
    const loaded = rightOf(assessJson(twoAxles({ gawr: '5,200 lb', cargo: '9,050 lb' })));
    expect(
      loaded.checks.filter(({ kind }) => kind === 'GVWR').map(({ verdict, reserve }) => [verdict, show(reserve.value)]),
    ).toEqual([['over', '-1,500 lb']]);
  });
});

describe('ST225/75R15 load range D: 2,620 lb is claimed, 2,540 lb is printed (four published charts, tire notes ST-1 to ST-4)', () => {
  const tires = (molded?: string) => ({
    designation: 'ST225/75R15 LRD',
    count: 2,
    fitment: 'single',
    pressure: '65 psi',
    ...(molded !== undefined && { molded: { single: molded } }),
  });

  it('four at the printed load are 10,160 lb', () => {
    const { rating: each, from } = rightOf(
      tireLoadRating({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' }),
    );
    const four = sum('four tires', [each, each, each, each]);
    expectReplays(four);
    expect([show(each.value), from, show(four.value)]).toEqual(['2,540 lb', 'table', '10,160 lb']);
  });
  it('then the tires limit, not the 5,200 lb axles', () => {
    const answer = rightOf(assessJson(twoAxles({ gvwr: '12,500 lb', beam: '5,200 lb', tires: tires() })));
    expectReplays(...workingsIn(answer));
    expect(
      answer.runningGear.systems.map(({ rating: { value }, governed }) => [
        show(value),
        governed.governing.map(({ name }) => name),
      ]),
    ).toEqual([
      ['5,080 lb', ['tires']],
      ['5,080 lb', ['tires']],
    ]);
    expect(show(answer.runningGear.group?.capacity.value ?? lb(0))).toBe('10,160 lb');
    expect(answer.payload?.anywhere?.governing.map(({ name }) => name)).toEqual(['tires']);
  });
  it('a GAWR of 5,200 lb above them is refused', () => {
    expect(assessJson(twoAxles({ gawr: '5,200 lb', tires: tires() }))).toMatchObject({
      left: {
        tag: 'UndecodableSpec',
        path: 'trailer.axles.0.gawr',
        problems: expect.arrayContaining([
          expect.objectContaining({
            path: 'trailer.axles.0.gawr',
            needed: 'at most 5,080 lb, the rating of its tires',
          }),
        ]),
      },
    });
  });
  it('with 2,620 lb molded on them the axles limit, and the disagreement with the table is reported', () => {
    const answer = rightOf(assessJson(twoAxles({ gvwr: '12,500 lb', gawr: '5,200 lb', tires: tires('2,620 lb') })));
    expect(answer.runningGear.systems.map(({ governed }) => governed.governing.map(({ name }) => name))).toEqual([
      ['GAWR'],
      ['GAWR'],
    ]);
    expect(
      answer.notes
        .filter(({ tag }) => tag === 'MoldedDiffersFromTable')
        .map(({ figures }) => figures?.map(({ value }) => show(value))),
    ).toEqual([
      ['2,620 lb', '2,540 lb'],
      ['2,620 lb', '2,540 lb'],
    ]);
  });
});
