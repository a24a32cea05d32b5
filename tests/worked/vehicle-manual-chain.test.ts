/** Tow vehicle chains with printed numbers, each with its source beside it. */
import { describe, expect, it } from 'vitest';
import {
  combinationWeight,
  largestTrailer,
  type TowVehicle,
  towChecks,
  weakestHitchPart,
} from '../../src/towing/index.js';
import { constant, sum } from '../../src/trace/index.js';
import { lb, percent, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('the chain of the vehicle manuals', () => {
  // vehicle owner manuals 2008-2010, trailer worked example
  const empty: TowVehicle = {
    hitch: 'ball behind',
    front: lb(2800),
    rear: lb(2700),
    gvwr: lb(7200),
    rearGawr: lb(4000),
    gcwr: lb(14000),
    overhang: 'unknown',
  };
  it('begins with 8,500 lb, 850 lb of tongue and 3,975 lb on the rear axle', () => {
    const answer = rightOf(
      largestTrailer({ vehicle: { ...empty, gvwr: undefined, rearGawr: undefined }, tongueShare: percent(10) }),
    );
    expect([answer.trailer, answer.tongue].map(({ value }) => show(value))).toEqual(['8,500 lb', '850 lb']);
    const { hitched, checks } = rightOf(towChecks(empty, { gross: answer.trailer, tongue: answer.tongue }));
    expect(show(hitched!.ontoRear.value)).toBe('1,275 lb');
    expect(show(hitched!.rear.value)).toBe('3,975 lb');
    expect(checks.map(({ kind, verdict, reserve }) => `${kind} ${verdict} ${show(reserve.value)}`)).toEqual([
      'tow vehicle GVWR within 850 lb',
      'tow vehicle rear GAWR within 25 lb',
      'GCWR within 0 lb',
    ]);
    expectReplays(answer.trailer, answer.tongue, ...checks.flatMap(({ reserve, used }) => [reserve, used]));
  });
  it('ends at 6,000 lb by the rear axle once people and cargo are aboard', () => {
    const loaded = { ...empty, front: lb(3100), rear: lb(3100) };
    const answer = rightOf(largestTrailer({ vehicle: loaded, tongueShare: percent(10) }));
    const by = Object.fromEntries(answer.bounds.map(({ name, limit }) => [name, show(limit.value)]));
    // The manual does not ask when the front wheels lift: 3,100 lb over half, over 10 percent.
    expect(by).toEqual({
      GCWR: '7,800 lb',
      'tow vehicle GVWR': '10,000 lb',
      'tow vehicle rear GAWR': '6,000 lb',
      'tow vehicle front axle lifts': '62,000 lb',
    });
    expect(answer.governing.map(({ name }) => name)).toEqual(['tow vehicle rear GAWR']);
    expect([answer.trailer, answer.tongue].map(({ value }) => show(value))).toEqual(['6,000 lb', '600 lb']);
    expectReplays(answer.trailer, answer.tongue, ...answer.bounds.map(({ limit }) => limit));
    // one pound of trailer more is over
    const { checks } = rightOf(towChecks(loaded, { gross: lb(6010), tongue: lb(601) }));
    expect(checks.filter(({ verdict }) => verdict === 'over').map(({ kind }) => kind)).toEqual([
      'tow vehicle rear GAWR',
    ]);
  });
});

describe('a combination over its rating', () => {
  // web example, reproduced by statics: GVWR 5,500, truck 4,500, trailer 2,500 + load 5,000, GCWR 11,000
  it('is 1,000 lb over its GCWR, with 1,000 lb left of the GVWR before the tongue', () => {
    const truck: TowVehicle = {
      hitch: 'ball behind',
      front: lb(2400),
      rear: lb(2100),
      gvwr: lb(5500),
      gcwr: lb(11000),
    };
    const trailer = sum('trailer gross', [constant(lb(2500)), constant(lb(5000))]);
    const answer = rightOf(towChecks(truck, { gross: trailer, tongue: lb(0) }));
    expect(show(answer.combination!.value)).toBe('12,000 lb');
    expect(answer.checks.map(({ kind, verdict, reserve }) => `${kind} ${verdict} ${show(reserve.value)}`)).toEqual([
      'tow vehicle GVWR within 1,000 lb',
      'GCWR over -1,000 lb',
    ]);
    expectReplays(answer.combination!);
  });
});

describe('a rig at 92 % front, 105 % rear, 100 % of GVWR', () => {
  // loads notes, section 5: the rear axle fails though GVWR is met
  it('fails by its rear axle alone', () => {
    const truck: TowVehicle = {
      hitch: 'ball behind',
      front: lb(4680),
      rear: lb(5020),
      gvwr: lb(10000),
      frontGawr: lb(5000),
      rearGawr: lb(5130),
      overhang: { ofWheelbase: percent(25) },
    };
    const { checks } = rightOf(towChecks(truck, { gross: lb(3000), tongue: lb(300) }));
    expect(checks.map(({ kind, verdict }) => `${kind} ${verdict}`)).toEqual([
      'tow vehicle GVWR within',
      'tow vehicle front GAWR within',
      'tow vehicle rear GAWR over',
    ]);
    expect(checks.map(({ used }) => used.value.value.times(100).toFixed(0))).toEqual(['100', '92', '105']);
  });
});

describe('the weakest hitch part', () => {
  // university extension guide PPP-92, as reported in trade press: 5,000 / 5,000 / 5,000 / 2,500
  it('governs the hitch', () => {
    const parts = ['receiver', 'ball mount', 'coupler'].map((part) => ({ part, rating: lb(5000) }));
    const answer = rightOf(weakestHitchPart([...parts, { part: 'ball', rating: lb(2500) }]));
    expect(show(answer.limit.value)).toBe('2,500 lb');
    expect(answer.governing.map(({ name }) => name)).toEqual(['ball']);
    expect(rightOf(weakestHitchPart(parts)).governing.map(({ name }) => name)).toEqual([
      'receiver',
      'ball mount',
      'coupler',
    ]);
    expectReplays(answer.limit);
  });
});

describe('the sum of a trade paper', () => {
  // construction-equipment trade press, 2010: capacity 12,000 + own weight 4,200; truck 10,500; 699 over 26,001
  it('comes to 26,700 lb', () => {
    const trailer = sum('capacity and own weight', [constant(lb(12000)), constant(lb(4200))]);
    const sumOfBoth = combinationWeight(lb(10500), trailer);
    expect([show(trailer.value), show(sumOfBoth.value)]).toEqual(['16,200 lb', '26,700 lb']);
    expectReplays(sumOfBoth);
  });
});
