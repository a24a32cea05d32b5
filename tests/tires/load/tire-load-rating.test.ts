/** What one tire may carry: order of sources, dual loads, disagreement, refusals. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { mixedTires, type Service, type Tire, type TireRating, tireLoadRating } from '../../../src/tires/index.js';
import { given, type Known, replay } from '../../../src/trace/index.js';
import { kg, lb, psi } from '../../../src/units/index.js';
import { Decimal } from '../../../src/units/internal.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const single: Service = { fitment: 'single', on: 'trailer' };
const dual: Service = { fitment: 'dual', on: 'trailer' };
const rate = (tire: Tire, service = single): TireRating => rightOf(tireLoadRating(tire, service));
const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

describe('tireLoadRating', () => {
  it('hands on whether the pressure molded into the tire is the printed one, and whether the rows lie below it', () => {
    const molded = { single: lb(2830), pressure: psi(80) };
    const { decisions } = rate({ designation: 'ST225/75R15 117/112N LRE', molded });
    const asked = decisions.map(({ left, comparison }) => `${left.symbol} ${comparison}`);
    expect(asked).toContain('molded pressure =');
    expect(asked).toContain('table pressure, ST225/75R15 E at 80 psi (ST-1) <=');
  });
  it('takes molded before index before table', () => {
    const designation = 'ST225/75R15 117/112N LRE';
    const answers = [
      rate({ designation, molded: { single: lb(2830) } }),
      rate({ designation }),
      rate({ designation: 'ST225/75R15 LRE' }),
    ];
    expect(answers.map(({ from }) => from)).toEqual(['molded', 'index', 'table']);
    expect(answers.map(({ rating }) => rating.value.value.toDecimalPlaces(2).toNumber())).toEqual([
      2830, 2832.94, 2830,
    ]);
    expect(rate({ designation: '295/75R22.5 LRG' }, dual).rating.value.value.toNumber()).toBe(5675);
    expectReplays(...answers.map(({ rating }) => rating));
  });
  it('tells every disagreement with figures and decisions, and overwrites nothing', () => {
    const answer = rate({ designation: 'ST225/75R15 117/112N LRE', molded: { single: lb(2900) } });
    expect(tags(answer)).toEqual(
      expect.arrayContaining(['MoldedDiffersFromIndex', 'MoldedDiffersFromTable', 'TablesDisagree']),
    );
    expect(answer.rating.value.value.toNumber()).toBe(2900);
    expect(answer.decisions.map(({ comparison, holds }) => `${comparison} ${holds}`)).toEqual(Array(3).fill('= false'));
  });
  it('is silent when molded kilograms are those of the index, and when molded pounds are those printed for it', () => {
    const molded = (single: Known<'lb' | 'kg'>) => tags(rate({ designation: '185R14C 98N', molded: { single } }));
    expect([molded(kg(750)), molded(lb(1653))]).toEqual([[], []]);
    expect([molded(kg(745)), molded(lb(1655))]).toEqual([['MoldedDiffersFromIndex'], ['MoldedDiffersFromIndex']]);
  });
  it('is silent when molded, index and table agree', () => {
    expect(rate({ designation: 'ST225/75R15 LRD', molded: { single: lb(2540) } }).notes).toEqual([]);
  });
  it('takes the lower of two prints unless the table is named (ST-1 2,040, ST-3 2,100)', () => {
    expect(rate({ designation: 'ST205/75R14 LRD' }).rating.value.value.toNumber()).toBe(2040);
    expect(rate({ designation: 'ST205/75R14 LRD', table: 'ST-3' }).rating.value.value.toNumber()).toBe(2100);
    expect(leftOf(tireLoadRating({ designation: 'ST205/75R14 LRD', table: 'ST-9' }, single))).toMatchObject({
      tag: 'NotTabulated',
    });
  });
  it('reads kilograms by an exact conversion', () => {
    expect(
      rate({ designation: 'ST225/75R15', molded: { single: kg(1150) } })
        .rating.value.value.toDecimalPlaces(3)
        .toFixed(),
    ).toBe('2535.316');
  });
  it('keeps the path of a molded figure, so that it can be varied', () => {
    const molded = given('molded load, single', lb(2540), 'label', 'axles.0.tire.molded');
    const { rating } = rate({ designation: 'P235/75R15', molded: { single: molded } });
    expect(replay(rating, new Map([['axles.0.tire.molded', new Decimal(2750)]])).value.toFixed()).toBe('2500');
  });
  it.each([
    ['molded single only', { designation: 'ST225/75R15 LRE', molded: { single: lb(2830) } }],
    ['single index only', { designation: 'LT265/75R16 123P' }],
    ['a table row without a dual load', { designation: 'ST225/75R15 LRD' }],
  ] as const)('never makes a dual load from %s', (_what, tire) => {
    const answer = tireLoadRating({ ...tire }, dual);
    expect(leftOf(answer)).toMatchObject({ tag: 'NoDualRating' });
    expect(describeError(leftOf(answer))).toContain('never derived');
  });
  it('takes a dual load from the dual column or dual index', () => {
    expect(rate({ designation: 'ST225/75R15 LRE' }, dual).rating.value.value.toNumber()).toBe(2470);
    expect(rate({ designation: '8.00-16.5/C 100/95' }, dual)).toMatchObject({ from: 'index' });
  });
  it('keeps a dual index at or below the molded single load', () => {
    const found = rate({ designation: 'ST225/75R15 117/117N', molded: { single: lb(2830) } }, dual);
    expectReplays(found.rating);
    expect([found.from, found.rating.value.value.toNumber()]).toEqual(['index', 2830]);
  });
  it('refuses a dual load above the single one, and nothing, and less', () => {
    expect(
      leftOf(tireLoadRating({ designation: 'ST225/75R15', molded: { single: lb(2470), dual: lb(2830) } }, single)),
    ).toMatchObject({ tag: 'DualAboveSingle' });
    expect(leftOf(tireLoadRating({ designation: 'ST225/75R15', molded: { single: lb(0) } }, single))).toMatchObject({
      tag: 'NotPositive',
    });
    expect(leftOf(tireLoadRating({ designation: 'ST225/75R15', molded: { single: lb(-1) } }, single))).toMatchObject({
      tag: 'NotPositive',
    });
    const inKg = { single: kg('749.9'), dual: kg(750) };
    expect(leftOf(tireLoadRating({ designation: '185R14C', molded: inKg }, single))).toMatchObject({
      single: '1,653 lb',
      dual: '1,654 lb',
    });
    expect(
      rate(
        { designation: 'ST225/75R15', molded: { single: lb(2830), dual: lb(2830) } },
        dual,
      ).rating.value.value.toNumber(),
    ).toBe(2830);
  });
  it('needs a load range for a table load, and a printed row', () => {
    expect(leftOf(tireLoadRating({ designation: 'ST225/75R15' }, single))).toMatchObject({ tag: 'LoadRangeNeeded' });
    expect(leftOf(tireLoadRating({ designation: 'ST235/85R16 LRF' }, single))).toMatchObject({
      tag: 'NotTabulated',
      nearest: [expect.stringContaining('ST235/85R16')],
    });
    expect(leftOf(tireLoadRating({ designation: 'ST195/75R14 LRD' }, single))).toMatchObject({ tag: 'NotTabulated' });
    expect(isLeft(tireLoadRating({ designation: 'nothing' }, single))).toBe(true);
  });
  it('does not take an unstated construction for radial', () => {
    expect(leftOf(tireLoadRating({ designation: 'LT235/85/16 LRE' }, single))).toMatchObject({
      tag: 'NotTabulated',
      asked: expect.stringContaining('unstated'),
    });
    expect(rate({ designation: 'ST205/75/15 LRC' }).rating.value.value.toNumber()).toBe(1820);
  });
  it('divides passenger tires by 1.10 on trailers and trucks, and no others', () => {
    const load = (designation: string, on: Service['on']): string =>
      rate({ designation }, { fitment: 'single', on }).rating.value.value.toDecimalPlaces(2).toFixed();
    expect([
      load('P235/75R15 XL', 'trailer'),
      load('P235/75R15 XL', 'truck'),
      load('P235/75R15 XL', 'passenger car'),
    ]).toEqual(['1984.55', '1984.55', '2183']);
    expect([load('195/75R16C 107/105R', 'trailer'), load('LT235/85R16 LRE', 'trailer')]).toEqual(['2149.51', '3042']);
  });
});

describe('mixedTires', () => {
  const [strong, weak] = [rate({ designation: 'ST225/75R15 LRE' }), rate({ designation: 'ST225/75R15 LRD' })];
  it('counts each tire with the least, and says so', () => {
    const found = rightOf(mixedTires([strong, weak]));
    expectReplays(found.each);
    expect(found.each.value.value.toNumber()).toBe(2540);
    expect(tags(found)).toEqual(['MixedTires']);
    expect(found.decisions).toHaveLength(1);
  });
  it('says so of one designation with two ratings, and of two designations with one', () => {
    const molded = (designation: string, pounds: number) => rate({ designation, molded: { single: lb(pounds) } });
    expect(tags(rightOf(mixedTires([weak, molded('ST225/75R15 LRD', 2500)])))).toEqual(['MixedTires']);
    expect(tags(rightOf(mixedTires([weak, molded('ST225/75R15 LRE', 2540)])))).toEqual(['MixedTires']);
    expect(tags(rightOf(mixedTires([weak, weak, molded('ST225/75R15 LRE', 2540)])))).toEqual(['MixedTires']);
    expect(tags(rightOf(mixedTires([weak, weak, molded('ST225/75R15 LRD', 2500)])))).toEqual(['MixedTires']);
  });
  it('has nothing to say of equal tires, and refuses none', () => {
    expect(rightOf(mixedTires([weak, weak])).notes).toEqual([]);
    expect(rightOf(mixedTires([weak])).each.value.value.toNumber()).toBe(2540);
    expect(leftOf(mixedTires([]))).toMatchObject({ tag: 'NoTires' });
  });
});
