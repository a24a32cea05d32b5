import { describe, expect, it } from 'vitest';
import { heaviestMachine, placeForTongueShare, placementWindow } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { replay } from '../../src/trace/index.js';
import { compare, inch, kg, lb, percent, show, showBrief } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';
import { band, machine, r1 } from './r1.js';

const names = (limits: readonly { name: string }[]): string[] => limits.map(({ name }) => name);

describe('placementWindow', () => {
  it('names every limit that ties at an end', () => {
    const tied = {
      ...r1,
      tongueLimits: [
        rating('receiver tongue', lb(1400)),
        rating('coupler tongue', lb(1400)),
        rating('ball mount tongue', lb(1500)),
      ],
    };
    expect(names(rightOf(placementWindow(tied, machine)).lower.setBy)).toEqual(['receiver tongue', 'coupler tongue']);
  });
  it('answers an empty window with both sides and their figures', () => {
    const window = rightOf(placementWindow({ ...r1, tongueLimits: [rating('receiver tongue', lb(1000))] }, machine));
    expect(window.empty).toBe(true);
    expect(window.width.value.value.isNegative()).toBe(true);
    expect(names(window.lower.setBy)).toEqual(['receiver tongue']);
    expect(names(window.upper.setBy)).toEqual(['guideline low']);
    const found = window.notes.find(({ tag }) => tag === 'EmptyWindow');
    expect(found?.says).toContain(
      'receiver tongue asks for a balance point at 179.26 in or further back, guideline low for 174.3 in or further forward',
    );
    expectReplays(window.width);
  });
  it('is not empty when the two ends tie exactly', () => {
    const window = rightOf(placementWindow({ ...r1, tongueLimits: [rating('receiver tongue', lb(1240))] }, machine));
    expect(window.empty).toBe(false);
    expect(compare(window.lower.at.value, window.upper.at.value)).toBe(0);
  });
  it('is bounded by the deck when nothing else is near', () => {
    const loose = { ...r1, guideline: 'no guideline', tongueLimits: [], axleLimits: [] } as const;
    const window = rightOf(placementWindow(loose, machine));
    expect([names(window.lower.setBy), names(window.upper.setBy)]).toEqual([['deck front'], ['deck rear']]);
    expect(show(window.lower.machineFront.value)).toBe('58 in');
    expect(show(window.upper.at.value)).toBe('230 in');
    expect(window.notes.map(({ tag }) => tag)).toEqual([
      'BehindTheAxles',
      'NoGuideline',
      'NoTongueLimit',
      'NoAxleLimit',
      'GrossNotHere',
    ]);
  });
  it('closes weight limits in by the uncertainty, and leaves the deck limits', () => {
    const window = rightOf(placementWindow(r1, machine));
    expect([showBrief(window.sure.lower.at.value), showBrief(window.sure.upper.at.value), window.sure.empty]).toEqual([
      '173 in',
      '172.3 in',
      true,
    ]);
    expect(window.notes.map(({ tag }) => tag)).toContain('WindowWithinUncertainty');
    const deckOnly = rightOf(
      placementWindow({ ...r1, guideline: 'no guideline', tongueLimits: [], axleLimits: [] }, machine),
    );
    expect(show(deckOnly.sure.lower.at.value)).toBe(show(deckOnly.lower.at.value));
  });
  it('at a sure end, the tongue stays within its limit wherever in the doubt the balance point lies', () => {
    const wide = { ...r1, guideline: band(8, 15) };
    const { sure } = rightOf(placementWindow(wide, machine));
    const at = (place: Decimal): Decimal =>
      new Decimal(480).plus(new Decimal(9200).times(new Decimal(1).minus(place.div(190))));
    expect(at(sure.lower.at.value.value.minus(2)).toFixed(6)).toBe('1400.000000');
    expect(at(sure.upper.at.value.value.plus(2)).toFixed(6)).toBe('992.000000');
  });
  it('counts what else lies on the trailer', () => {
    const tank = { name: 'tank', weight: lb(600), at: inch(80) };
    const window = rightOf(placementWindow({ ...r1, items: [...r1.items, tank] }, machine));
    // statics: T0 = 480 + 600 (190 - 80)/190 = 827.37; x = 190 (1 - (1,400 - 827.37)/9,200) = 178.17
    expect(showBrief(window.lower.at.value)).toBe('178.17 in');
    expectReplays(window.width, window.lower.tongue);
  });
  it('lets a study change the machine weight: the working speaks for other weights too', () => {
    const window = rightOf(placementWindow(r1, machine));
    const changed = replay(window.width, new Map([['cargo.0.weight', new Decimal(10800)]]));
    const again = rightOf(placementWindow(r1, { ...machine, weight: lb(10800) })).width.value;
    expect(changed.value.toFixed(20)).toBe(again.value.toFixed(20));
  });
  it('hands back what it decided on, and every one of them held', () => {
    const { decisions } = rightOf(placementWindow(r1, machine));
    expect(decisions.map(({ left, comparison }) => `${left.symbol} ${comparison}`)).toEqual(
      expect.arrayContaining(['machine weight >', 'deck front <=', 'machine length >', 'balance point uncertainty >=']),
    );
    expect(decisions.every(({ holds }) => holds)).toBe(true);
  });
  it('takes any unit', () => {
    const metric = rightOf(placementWindow(r1, { ...machine, weight: kg('4173.049804') }));
    expect(showBrief(metric.lower.at.value)).toBe('171 in');
    expectReplays(metric.width);
  });
  it.each([
    ['a machine of no weight', { ...machine, weight: lb(0) }, r1, 'OutsideItsRange'],
    ['a machine of no length', { ...machine, length: inch(0), balancePoint: inch(0) }, r1, 'OutsideItsRange'],
    ['a balance point outside the machine', { ...machine, balancePoint: inch(121) }, r1, 'OutsideItsRange'],
    ['a negative uncertainty', { ...machine, uncertainty: inch(-1) }, r1, 'OutsideItsRange'],
    ['a deck the wrong way round', machine, { ...r1, deck: { front: inch(298), rear: inch(58) } }, 'OutsideItsRange'],
    ['axles at the coupler', machine, { ...r1, axlesAt: inch(0) }, 'AxlesNotBehindCoupler'],
    ['no trailer', machine, { ...r1, items: [] }, 'NothingWeighed'],
  ])('refuses %s', (_, what, trailer, tag) => {
    expect(leftOf(placementWindow(trailer, what)).tag).toBe(tag);
  });
});

describe('placeForTongueShare', () => {
  it('answers a place behind the axles when that is what the share needs', () => {
    const place = rightOf(
      placeForTongueShare(
        { ...r1, items: [{ name: 'trailer', weight: lb(3200), tongue: lb(1400) }] },
        lb(2000),
        percent(10),
      ),
    );
    expect(compare(place.at.value, inch(190))).toBe(1);
  });
  it('refuses a share above the whole', () => {
    expect(leftOf(placeForTongueShare(r1, lb(9200), percent(101))).tag).toBe('OutsideItsRange');
  });
});

describe('heaviestMachine', () => {
  it('is 10,800 lb for the reference trailer: hitch against low guideline, (1,400 - 320) / 0.1', () => {
    const answer = rightOf(heaviestMachine(r1, machine));
    expect(show(answer.heaviest.value)).toBe('10,800 lb');
    expect(answer.governedBy.map(({ front, rear }) => [front, rear])).toEqual([['receiver tongue', 'guideline low']]);
    expect(answer.exists).toBe(true);
    // with 2 in of doubt: 1,080 x 190 / (19 + 4)
    expect(showBrief(answer.sure.heaviest.value)).toBe('8,921.74 lb');
    expectReplays(answer.heaviest, answer.sure.heaviest);
    // each pair that may close was a decision: 3 front limits x 3 rear limits, nominal and sure, beside the guards
    expect(
      answer.decisions.filter(({ left }) => left.symbol?.startsWith('closing of') === true && left.kind === 'computed')
        .length,
    ).toBeGreaterThanOrEqual(18);
  });
  it('says when the empty trailer is over already', () => {
    const answer = rightOf(heaviestMachine({ ...r1, tongueLimits: [rating('receiver tongue', lb(300))] }, machine));
    expect(answer.exists).toBe(false);
    expect(answer.heaviest.value.value.isNegative()).toBe(true);
  });
  it('gives a machine longer than the deck no weight at all, and names the deck', () => {
    const answer = rightOf(heaviestMachine(r1, { ...machine, length: inch(250), balancePoint: inch(125) }));
    expect(show(answer.heaviest.value)).toBe('0 lb');
    expect(answer.governedBy.map(({ front, rear }) => [front, rear])).toEqual([['deck front', 'deck rear']]);
    expect(answer.exists).toBe(false);
  });
  it('names a lightest machine when one must relieve the tongue from behind the axles', () => {
    const heavyNose = {
      ...r1,
      items: [{ name: 'trailer', weight: lb(3200), tongue: lb(1600) }],
      guideline: 'no guideline' as const,
    };
    const answer = rightOf(heaviestMachine(heavyNose, { ...machine, uncertainty: inch(0) }));
    // 200 lb too much x 190 in = 38,000 lb in, relieved 40 in behind the axles at most: 950 lb
    expect(showBrief(answer.lightest?.value ?? lb(0))).toBe('950 lb');
    expect(answer.exists).toBe(true);
  });
  it('says that nothing limits the weight when no pair of limits closes', () => {
    expect(
      leftOf(heaviestMachine({ ...r1, guideline: 'no guideline', tongueLimits: [], axleLimits: [] }, machine)).tag,
    ).toBe('NothingLimits');
  });
});
