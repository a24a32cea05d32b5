/** The constructed placement case (derived; plain statics): a 190, W0 3,200, T0 480, P 9,200, hitch 1,400, axles 14,000. */
import { describe, expect, it } from 'vitest';
import { balance, placeForTongueShare, placementWindow } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { inch, lb, percent, showBrief } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';
import { machine, r1 } from '../load/reference-case.js';

describe('where the machine stands for a tongue share', () => {
  it.each([
    ['10', '174.3 in', '1,240 lb'],
    ['12', '169.18 in', '1,488 lb'],
    ['12.5', '167.9 in', '1,550 lb'],
    ['15', '161.5 in', '1,860 lb'],
  ])('%s %%: balance point at %s, tongue %s', (share, at, tongue) => {
    const place = rightOf(placeForTongueShare(r1, lb(9200), percent(share)));
    expect(showBrief(place.at.value)).toBe(at);
    expect(showBrief(place.tongue.value)).toBe(tongue);
    expectReplays(place.at, place.tongue);
  });
});

describe('the window', () => {
  const window = rightOf(placementWindow(r1, machine));
  it('runs from the hitch limit to the low guideline: 171.0 to 174.3, 3.3 in', () => {
    expect(showBrief(window.lower.at.value)).toBe('171 in');
    expect(showBrief(window.upper.at.value)).toBe('174.3 in');
    expect(showBrief(window.width.value, 1)).toBe('3.3 in');
    expect(window.empty).toBe(false);
    expect(window.lower.setBy.map(({ name }) => name)).toEqual(['receiver tongue']);
    expect(window.upper.setBy.map(({ name }) => name)).toEqual(['guideline low']);
  });
  it('puts 1,400 lb (11.29 %) on the hitch at the front end, the machine front at 119.0 in', () => {
    expect(showBrief(window.lower.tongue.value)).toBe('1,400 lb');
    expect(showBrief(window.lower.tongueShare.value, 4)).toBe('0.1129');
    expect(showBrief(window.lower.machineFront.value, 1)).toBe('119 in');
    expect(showBrief(window.upper.tongue.value)).toBe('1,240 lb');
  });
  it('moves 48.42 lb an inch; 2 in of doubt are 97 lb', () => {
    expect(showBrief(window.poundsPerInch.value)).toBe('48.42 lb/in');
    expect(showBrief(window.tongueUncertainty.value, 0)).toBe('97 lb');
  });
  it('has the axle limit at 232.96 in for 14,000 lb, 191.65 in for 12,000 lb', () => {
    const axles = (limit: number): string => {
      const { limits } = rightOf(placementWindow({ ...r1, axleLimits: [rating('axle group', lb(limit))] }, machine));
      return showBrief(limits.find(({ name }) => name === 'axle group')?.at.value ?? inch(0));
    };
    expect(axles(14000)).toBe('232.96 in');
    expect(axles(12000)).toBe('191.65 in');
  });
  it('replays', () => {
    const { lower, upper, sure } = window;
    expectReplays(window.width, sure.width, window.poundsPerInch, window.tongueUncertainty);
    for (const end of [lower, upper])
      expectReplays(end.at, end.machineFront, end.tongue, end.tongueShare, end.axleLoad);
    expectReplays(...window.limits.map(({ at }) => at));
  });
});

describe('shares of the machine weight that are no tongue percentage (constructed)', () => {
  const on = (items: readonly { weight: number; at: string }[]): { share: string; trailer: string } => {
    const balanced = rightOf(
      balance(
        [
          ...r1.items,
          ...items.map(({ weight, at }, i) => ({ name: `part ${i + 1}`, weight: lb(weight), at: inch(at) })),
        ],
        { axlesAt: inch(190) },
      ),
    );
    return {
      share: balanced.tongue.value.value.minus(480).div(9200).times(100).toFixed(2),
      trailer: balanced.tongueShare.value.value.times(100).toFixed(2),
    };
  };
  it('uniform over the deck: 6.32 % of the load, 8.56 % of the trailer', () => {
    expect(on([{ weight: 9200, at: '178' }])).toEqual({ share: '6.32', trailer: '8.56' });
  });
  it('60 % ahead of the axles, 40 % behind: 9.47 and 10.90 %', () => {
    expect(
      on([
        { weight: 5520, at: '124' },
        { weight: 3680, at: '244' },
      ]),
    ).toEqual({ share: '9.47', trailer: '10.90' });
  });
  it('60 % ahead of the deck middle: 12.63 and 13.24 %', () => {
    expect(
      on([
        { weight: 5520, at: '118' },
        { weight: 3680, at: '238' },
      ]),
    ).toEqual({ share: '12.63', trailer: '13.24' });
  });
});
