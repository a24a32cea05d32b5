/** The interval of places that every limit leaves, or the limits that leave none. */
import { describe, expect, it } from 'vitest';
import { placementWindow } from '../../../src/load/index.js';
import { rating } from '../../../src/ratings/index.js';
import { replay } from '../../../src/trace/index.js';
import { compare, inch, kg, lb, show, showBrief } from '../../../src/units/index.js';
import { Decimal } from '../../../src/units/internal.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';
import { band, machine, r1 } from '../reference-case.js';

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
  it('says that the machine balances behind the axles where its rear end does, and not at the axles', () => {
    const loose = { ...r1, guideline: 'no guideline', tongueLimits: [], axleLimits: [] } as const;
    const says = (deckRear: string) => {
      const deck = { front: inch(58), rear: inch(deckRear) };
      return rightOf(placementWindow({ ...loose, deck }, machine)).notes.some(({ tag }) => tag === 'BehindTheAxles');
    };
    // The machine's rear is 68 in behind its balance point, the axles stand at 190 in.
    expect(['258', '258.1'].map(says)).toEqual([false, true]);
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
  it('tells at both ends what the axles carry: the gross weight without the tongue load', () => {
    const { lower, upper, gross } = rightOf(placementWindow(r1, machine));
    for (const end of [lower, upper]) expect(plain(end.axleLoad)).toBeCloseTo(plain(gross) - plain(end.tongue), 9);
    // 12,400 lb in all, 1,400 lb of it on the receiver at the front end.
    expect([plain(gross), plain(lower.tongue), plain(lower.axleLoad)].map((each) => Number(each.toFixed(6)))).toEqual([
      12400, 1400, 11000,
    ]);
  });
  it('hands back what it decided on', () => {
    const { decisions } = rightOf(placementWindow(r1, machine));
    expect(decisions.map(({ left, comparison }) => `${left.symbol} ${comparison}`)).toEqual(
      expect.arrayContaining(['machine weight >', 'deck front <=', 'machine length >', 'balance point uncertainty >=']),
    );
    // All held but one: the front end of the window does not lie behind its rear end. That of the sure window does.
    expect(decisions.filter(({ holds }) => !holds).map(({ left }) => left.symbol)).toEqual(['front end of the window']);
    expect(decisions.find(({ left }) => left.symbol === 'front end of the sure window')?.holds).toBe(true);
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
