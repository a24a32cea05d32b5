/** What a build may carry: the least of every bound, the one that governs named; and the claim that adds the tongue load. */
import { describe, expect, it } from 'vitest';
import { type LadenLimit, payload, payloadClaim, type ShareBand } from '../../../src/load/index.js';
import { rating } from '../../../src/ratings/index.js';
import { constant, given } from '../../../src/trace/index.js';
import { lb, ratio, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

const curb = given('curb weight', lb(3000), 'scale');
const share = (low: string, high = low): ShareBand => ({ low: constant(ratio(low)), high: constant(ratio(high)) });
const limit = (name: string, on: LadenLimit['on'], pounds: number): LadenLimit => ({
  name,
  on,
  limit: given(name, lb(pounds), 'label'),
});
const gvwr = limit('GVWR', 'gross', 14000);

const ask = (limits: readonly LadenLimit[], band = share('0.12')) => {
  const answer = rightOf(payload(curb, band, limits));
  expectReplays(...workingsIn(answer));
  return {
    most: show(answer.anywhere!.weight.value),
    by: answer.anywhere!.governing.map(({ name }) => name),
    bounds: answer.anywhere!.limits.map(({ limit: { value } }) => show(value)),
  };
};

describe('payload', () => {
  it('is GVWR less the whole empty trailer; the tongue load is no part of the sum', () => {
    for (const tongue of ['0.05', '0.12', '0.25'])
      expect(ask([gvwr], share(tongue))).toEqual({ most: '11,000 lb', by: ['GVWR'], bounds: ['11,000 lb'] });
  });
  it('by the axles counts that the tongue relieves them', () => {
    expect(ask([gvwr, limit('GAWR', 'axles', 11000)])).toEqual({
      most: '9,500 lb',
      by: ['GAWR'],
      bounds: ['11,000 lb', '9,500 lb'],
    });
  });
  it('by the tongue: what the coupler takes, over the share', () => {
    expect(ask([gvwr, limit('coupler', 'tongue', 1500)])).toMatchObject({ most: '9,500 lb', by: ['coupler'] });
  });
  it('holds for a whole band: the axles at its light end, the tongue at its heavy end', () => {
    expect(ask([limit('GAWR', 'axles', 9000), limit('coupler', 'tongue', 1800)], share('0.1', '0.15')).bounds).toEqual([
      '7,000 lb',
      '9,000 lb',
    ]);
  });
  it('just below, at and above another bound is governed by the lesser; a tie names both', () => {
    const by = (gawr: number): readonly string[] => ask([gvwr, limit('GAWR', 'axles', gawr)]).by;
    expect([by(12319), by(12320), by(12321)]).toEqual([['GAWR'], ['GVWR', 'GAWR'], ['GVWR']]);
  });
  it('is negative when the empty trailer is over already: that is an answer', () => {
    expect(ask([limit('GVWR', 'gross', 2990)]).most).toBe('-10 lb');
  });
  it('refuses shares that are none, a band upside down, and no limits at all', () => {
    for (const band of [share('0'), share('-0.1'), share('1'), share('0.2', '0.1'), share('0.1', '1')])
      expect(leftOf(payload(curb, band, [gvwr]))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(payload(curb, share('0.12'), []))).toEqual({ chapter: 'load', tag: 'NoLimits' });
  });
  it('hands back what it compared', () =>
    // The band, and that each of the two figures is not below zero.
    expect(rightOf(payload(curb, share('0.1', '0.15'), [gvwr])).decisions).toHaveLength(5));
});

describe('payload at the best share of the band (statics)', () => {
  const best = (limits: readonly LadenLimit[], band = share('0.1', '0.15')) => {
    const { best: found } = rightOf(payload(curb, band, limits));
    expectReplays(...workingsIn(found));
    return found!;
  };
  const [gawr, coupler] = [limit('GAWR', 'axles', 9000), limit('coupler', 'tongue', 1200)];
  const plainly = (figure: { value: { value: { toNumber(): number } } } | undefined) => figure?.value.value.toNumber();

  it('axles and tongue together carry what each may: 9,000 + 1,200 - 3,000 lb, at 1,200 / 10,200 of the weight', () => {
    const found = best([gawr, coupler]);
    expect(show(found.weight.value)).toBe('7,200 lb');
    expect(found.governing.map(({ name }) => name)).toEqual(['GAWR with coupler']);
    expect([plainly(found.shares?.from), plainly(found.shares?.to)]).toEqual([
      expect.closeTo(1200 / 10200, 14),
      expect.closeTo(1200 / 10200, 14),
    ]);
  });
  it('a gross limit below both leaves a range of shares: from where the axles are relieved to where the tongue is full', () => {
    const found = best([gawr, coupler, limit('GVWR', 'gross', 9990)]);
    expect(found.governing.map(({ name }) => name)).toEqual(['GVWR']);
    expect([plainly(found.shares?.from), plainly(found.shares?.to)]).toEqual([
      expect.closeTo(0.1, 14),
      expect.closeTo(1200 / 9990, 14),
    ]);
  });
  it('where the two do not meet in the band, the nearer end sets it', () => {
    expect(show(best([gawr, limit('coupler', 'tongue', 900)]).weight.value)).toBe('6,000 lb'); // 900 / 0.1 - 3,000
    const loose = best([gawr, limit('coupler', 'tongue', 3000)]);
    expect(plainly(loose.weight)).toBeCloseTo(9000 / 0.85 - 3000, 8);
    expect(loose.governing.map(({ name }) => name)).toEqual(['GAWR']);
  });
  it('bars put a part of the tongue load back on the axles', () => {
    const returned = constant(ratio('0.25'));
    const found = best([{ ...gawr, returned }, coupler]);
    expect(show(found.weight.value)).toBe('6,900 lb'); // 9,000 + 0.75 x 1,200 - 3,000
  });
  it('a load off the middle counts more on its side', () => {
    // W - T + 0.2 P <= 9,000 at T = 1,200: 1.2 P = 9,000 + 1,200 - 3,000
    const found = best([{ ...gawr, lean: constant(ratio('0.2')) }, coupler]);
    expect(plainly(found.weight)).toBeCloseTo(6000, 10);
  });
  it('a limit on the load itself is one', () =>
    expect(show(best([gawr, limit('ramps', 'payload', 4000)]).weight.value)).toBe('4,000 lb'));
  it('where a gross rating and axles with tongue set one figure, the rating alone is named', () => {
    const found = best([gawr, coupler, limit('GVWR', 'gross', 10200)]);
    expect(show(found.weight.value)).toBe('7,200 lb');
    expect(found.governing.map(({ name }) => name)).toEqual(['GVWR']);
  });
  it('of nothing at all still holds at its shares; of less than nothing at none', () => {
    expect(best([limit('GVWR', 'gross', 3000)]).shares).toBeDefined();
    expect(best([limit('GVWR', 'gross', 2999)]).shares).toBeUndefined();
  });
  it('holds only at shares at which what must press does: the rear axle at no more than 1 - 8,700 / 10,000', () => {
    const presses: LadenLimit = { ...limit('axle 2 presses', 'axles', 8700), atLeast: true };
    const found = best([limit('GVWR', 'gross', 10000), presses]);
    expect([plainly(found.shares?.from), plainly(found.shares?.to)]).toEqual([
      expect.closeTo(0.1, 14),
      expect.closeTo(0.13, 14),
    ]);
  });
  it('holds only from the share at which the tongue presses with what it must', () => {
    const presses: LadenLimit = { ...limit('tongue presses', 'tongue', 1200), atLeast: true };
    const found = best([limit('GVWR', 'gross', 10000), presses]);
    expect([plainly(found.shares?.from), plainly(found.shares?.to)]).toEqual([
      expect.closeTo(0.12, 14),
      expect.closeTo(0.15, 14),
    ]);
  });
  it('holds at every share where at the lightest the tongue presses with just what it must', () => {
    const anywhere = (pounds: number) =>
      rightOf(
        payload(curb, share('0.1', '0.15'), [
          limit('GVWR', 'gross', 10000),
          { ...limit('tongue presses', 'tongue', pounds), atLeast: true },
        ]),
      );
    // 0.1 x 10,000 lb
    expect([anywhere(1000).anywhere && show(anywhere(1000).anywhere!.weight.value), anywhere(1000).lifts]).toEqual([
      '7,000 lb',
      [],
    ]);
    expect([anywhere(1001).anywhere, anywhere(1001).lifts]).toEqual([undefined, ['tongue presses']]);
  });
  it('is absent where something lifts, and says what', () => {
    const presses: LadenLimit = { ...limit('axle 1 presses', 'axles', 9500), atLeast: true };
    const found = rightOf(payload(curb, share('0.1', '0.15'), [gawr, coupler, presses]));
    expect([found.best, found.anywhere, found.lifts]).toEqual([undefined, undefined, ['axle 1 presses']]);
  });
  it('is one figure with the other where one share is asked', () => {
    const found = rightOf(payload(curb, share('0.12'), [gawr, coupler]));
    expect(show(found.best!.weight.value)).toBe(show(found.anywhere!.weight.value));
  });
});

describe('the claim that adds the tongue load', () => {
  it('is over by the tongue load, whatever the share', () => {
    for (const [tongue, over] of [
      ['0.1', '-1,400 lb'],
      ['0.15', '-2,100 lb'],
      ['0.001', '-14 lb'],
    ] as const) {
      const claim = payloadClaim(curb, constant(ratio(tongue)), rating('GVWR', given('GVWR', lb(14000), 'label')));
      expectReplays(...workingsIn(claim));
      expect([claim.check.verdict, show(claim.check.reserve.value), claim.check.what]).toEqual([
        'over',
        over,
        'gross against GVWR',
      ]);
      expect(claim.gross.value.value.minus(claim.claimed.value.value).toNumber()).toBe(3000);
    }
  });
});
