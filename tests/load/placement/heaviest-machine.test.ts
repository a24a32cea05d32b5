/** The heaviest machine that has a place at all. */
import { describe, expect, it } from 'vitest';
import { heaviestMachine } from '../../../src/load/index.js';
import { rating } from '../../../src/ratings/index.js';
import { given } from '../../../src/trace/index.js';
import { inch, lb, show, showBrief } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';
import { machine, r1 } from '../reference-case.js';

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
  it('exists from anything above nothing', () => {
    const limitedTo = (pounds: string) => {
      const ramps = { name: 'ramps', on: 'payload', limit: given('ramps', lb(pounds), 'label') } as const;
      return rightOf(heaviestMachine({ ...r1, limits: [ramps] }, machine)).exists;
    };
    expect(['0.5', '0', '-0.5'].map(limitedTo)).toEqual([true, false, false]);
  });
  it('gives a machine longer than the deck no weight at all, and names the deck', () => {
    const answer = rightOf(heaviestMachine(r1, { ...machine, length: inch(250), balancePoint: inch(125) }));
    expect(show(answer.heaviest.value)).toBe('0 lb');
    expect(answer.governedBy.map(({ front, rear }) => [front, rear])).toEqual([['deck front', 'deck rear']]);
    expect(answer.exists).toBe(false);
  });
  it('is refused where nothing limits the weight but the doubt about the balance point', () => {
    // A tongue band alone opens ever wider with the weight; 2 in of doubt close it, but name no machine that is too heavy without them.
    const press = {
      name: 'tongue presses',
      on: 'tongue',
      limit: given('least', lb(100), 'stated'),
      atLeast: true,
    } as const;
    const trailer = {
      ...r1,
      guideline: 'no guideline',
      tongueLimits: [rating('receiver tongue', lb(1400))],
      axleLimits: [],
      limits: [press],
    } as const;
    const wide = { front: inch(-1000), rear: inch(1000) };
    for (const uncertainty of [inch(0), inch(2)])
      expect(leftOf(heaviestMachine({ ...trailer, deck: wide }, { ...machine, uncertainty })).tag).toBe(
        'NothingLimits',
      );
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
    const limitedTo = (pounds: number) => {
      const ramps = { name: 'ramps', on: 'payload', limit: given('ramps', lb(pounds), 'label') } as const;
      const found = rightOf(heaviestMachine({ ...heavyNose, limits: [ramps] }, { ...machine, uncertainty: inch(0) }));
      return [found.exists, found.governedBy, found.byWeight.map(({ name }) => name)];
    };
    expect([950, 949].map(limitedTo)).toEqual([
      [true, [], ['ramps']],
      [false, [], ['ramps']],
    ]);
  });
  it('names the limits on the whole and on the load that set it', () => {
    const limits = [
      { name: 'GVWR', on: 'gross', limit: given('GVWR', lb(9200), 'label') },
      { name: 'ramps', on: 'payload', limit: given('ramps', lb(6000), 'label') },
      { name: 'winch', on: 'payload', limit: given('winch', lb(6001), 'label') },
    ] as const;
    const answer = rightOf(heaviestMachine({ ...r1, limits }, { ...machine, uncertainty: inch(0) }));
    expect(show(answer.heaviest.value)).toBe('6,000 lb');
    expect([answer.byWeight.map(({ name }) => name), answer.governedBy]).toEqual([['GVWR', 'ramps'], []]);
  });
  it('of axle limits that stand alike the strictest counts', () => {
    const axle = (name: string, pounds: number) =>
      ({ name, on: 'axles', limit: given(name, lb(pounds), 'label') }) as const;
    const by = (...pounds: readonly number[]): string =>
      showBrief(
        rightOf(
          heaviestMachine(
            { ...r1, limits: pounds.map((each, i) => axle(`axle ${i + 1}`, each)) },
            { ...machine, uncertainty: inch(0) },
          ),
        ).heaviest.value,
      );
    expect([by(8000, 7000), by(7000, 8000)]).toEqual([by(7000), by(7000)]);
    expect(by(8000)).not.toBe(by(7000));
  });
  it('of several lightest machines the heaviest counts: the guideline asks for more relief than the receiver', () => {
    const heavyNose = { ...r1, items: [{ name: 'trailer', weight: lb(3200), tongue: lb(1600) }] };
    const answer = rightOf(heaviestMachine(heavyNose, { ...machine, uncertainty: inch(0) }));
    // 1,600 - P 40/190 <= 0.15 (3,200 + P): P >= 1,120 / (0.15 + 40/190)
    expect(answer.lightest?.value.value.toNumber()).toBeCloseTo(1120 / (0.15 + 40 / 190), 8);
    expect(answer.pairs.filter(({ allows }) => allows === 'least').length).toBeGreaterThan(1);
  });
  it('says that nothing limits the weight when no pair of limits closes', () => {
    expect(
      leftOf(heaviestMachine({ ...r1, guideline: 'no guideline', tongueLimits: [], axleLimits: [] }, machine)).tag,
    ).toBe('NothingLimits');
  });
});
