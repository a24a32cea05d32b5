/** What functions on one rule or rating refuse, each with the figure that cannot be. */
import { describe, expect, it } from 'vitest';
import {
  brakeException,
  coupledAxleLoad,
  gvwrLowerBound,
  largestRatedCargo,
  placardLoadLeft,
  weightClassForFacts,
  wordsForRules,
} from '../../src/rules/index.js';
import { inch, lb, percent } from '../../src/units/index.js';
import { facts, leftOf, orFail } from './helpers.js';

describe('figures that cannot be', () => {
  it.each([
    [
      'a tongue share of all',
      () => coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(100), sumOfGawrs: lb(7000) }),
      'tongue share',
    ],
    [
      'a tongue share below zero',
      () => coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(-1), sumOfGawrs: lb(7000) }),
      'tongue share',
    ],
    [
      'axles rated for nothing',
      () => coupledAxleLoad({ gvwr: lb(7000), tongueShare: percent(10), sumOfGawrs: lb(0) }),
      'sum of GAWRs',
    ],
    [
      'a label of nothing',
      () => coupledAxleLoad({ gvwr: lb(0), tongueShare: percent(10), sumOfGawrs: lb(7000) }),
      'GVWR',
    ],
    ['no cargo rated', () => gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(0), seats: 0 }), 'rated cargo'],
    ['no trailer', () => gvwrLowerBound({ unloaded: lb(0), ratedCargo: lb(5000), seats: 0 }), 'unloaded weight'],
    ['half a seat', () => gvwrLowerBound({ unloaded: lb(2000), ratedCargo: lb(5000), seats: 0.5 }), 'seats'],
    ['seats below none', () => largestRatedCargo({ gvwr: lb(7000), unloaded: lb(2000), seats: -1 }), 'seats'],
    ['a trailer of nothing', () => largestRatedCargo({ gvwr: lb(7000), unloaded: lb(0), seats: 0 }), 'unloaded weight'],
    ['an occupant of nothing', () => placardLoadLeft(lb(1400), [lb(150), lb(0)]), 'occupant 2'],
    [
      'a full trailer on no axles',
      () =>
        brakeException({
          kind: 'full trailer',
          gross: lb(3000),
          trailerAxleWeights: lb(0),
          towingAxleWeights: lb(5000),
        }),
      'trailer axle weights',
    ],
    [
      'a truck on no axles',
      () =>
        brakeException({ kind: 'semitrailer', gross: lb(3000), weightOnTowVehicle: lb(300), towingAxleWeights: lb(0) }),
      'towing axle weights',
    ],
    [
      'inches on the hitch',
      () =>
        brakeException({
          kind: 'semitrailer',
          gross: lb(3000),
          weightOnTowVehicle: inch(3) as never,
          towingAxleWeights: lb(5000),
        }),
      'weight on tow vehicle',
    ],
  ] as const)('%s', (_, asked, what) => {
    expect(leftOf<unknown>(asked())).toMatchObject({ chapter: 'rules', tag: 'OutOfRange', what });
  });
  it('nobody aboard leaves the whole placard', () => {
    expect(orFail(placardLoadLeft(lb(1400), [])).value.value.toNumber()).toBe(1400);
  });
});

describe('words', () => {
  it('name both of two facts that contradict each other', () => {
    expect(
      wordsForRules({
        chapter: 'rules',
        tag: 'ContradictoryFacts',
        facts: ['trailer unloaded', 'trailer gross'],
        found: ['3,000 lb', '2,999 lb'],
        needed: 'a loaded trailer that weighs no less than the empty one',
      }),
    ).toBe(
      'trailer unloaded and trailer gross contradict each other: 3,000 lb and 2,999 lb; give a loaded trailer that weighs no less than the empty one',
    );
  });
});

describe('a step table', () => {
  const table = {
    id: 'tandem-fee',
    topic: 'fee by tandem (invented)',
    jurisdiction: 'x',
    test: 'heaviest tandem',
    operator: '<=',
    unit: 'lb',
    steps: [{ class: 'a', upTo: '20000' }],
    effective: '2026-01-01',
    clause: 'invented',
    source: 'invented',
    grade: 'memory',
    read: '2026-11',
  } as const;
  it('of what is not there has no class', () => {
    expect(leftOf(weightClassForFacts(table, facts('heaviest tandem: none')))).toMatchObject({
      tag: 'MissingFacts',
      missing: ['heaviest tandem'],
    });
  });
  it('reads facts that can be only', () => {
    expect(leftOf(weightClassForFacts(table, facts('heaviest tandem: 9000 lb, trailer gross: 0 lb')))).toMatchObject({
      tag: 'OutOfRange',
      what: 'trailer gross',
    });
  });
});
