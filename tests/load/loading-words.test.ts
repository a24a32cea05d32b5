/** Every error of placing, ramps and tiedowns says what was asked, found and needed, with its numbers. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import type { LoadingError } from '../../src/load/index.js';
import { inch, lb, ratio } from '../../src/units/index.js';

const errors: Record<LoadingError['tag'], [LoadingError, string]> = {
  MustBeAboveZero: [
    { chapter: 'load', tag: 'MustBeAboveZero', what: 'machine weight', found: lb(0), path: 'cargo.0.weight' },
    'cargo.0.weight: asked machine weight; found 0 lb; needed a figure above zero',
  ],
  MustNotBeNegative: [
    { chapter: 'load', tag: 'MustNotBeNegative', what: 'balance point uncertainty', found: inch(-2) },
    'asked balance point uncertainty; found -2 in; needed zero or more',
  ],
  EndsReversed: [
    { chapter: 'load', tag: 'EndsReversed', what: 'deck ends', low: inch(298), high: inch(58) },
    'asked deck ends; found a low end of 298 in and a high end of 58 in; needed the low end at or below the high end',
  ],
  OutsideItsRange: [
    {
      chapter: 'load',
      tag: 'OutsideItsRange',
      what: 'tongue share wanted',
      found: ratio(2),
      from: ratio(0),
      to: ratio(1),
    },
    'asked tongue share wanted; found 2; needed a figure between 0 and 1',
  ],
  RampTooShort: [
    { chapter: 'load', tag: 'RampTooShort', height: inch(34), length: inch(30) },
    'asked a ramp from the ground to the deck; found a ramp of 30 in for a height of 34 in; needed a ramp at least as long as the deck is high',
  ],
  SpringRatesMissing: [
    { chapter: 'load', tag: 'SpringRatesMissing', axles: 3 },
    'asked the split over 3 independent axles; found no spring rates; needed the spring rate of each axle, its place, and how far the ball is from level height',
  ],
  NothingGiven: [
    { chapter: 'load', tag: 'NothingGiven', what: 'parts of the tiedown' },
    'asked parts of the tiedown; found none; needed at least one',
  ],
  NotACount: [
    { chapter: 'load', tag: 'NotACount', what: 'number of tiedowns', found: '0.5', most: 1000 },
    'asked number of tiedowns; found 0.5; needed a whole number from 1 to 1000',
  ],
  NothingLimits: [
    { chapter: 'load', tag: 'NothingLimits', what: 'the heaviest machine', given: ['deck front', 'deck rear'] },
    'asked the heaviest machine; found no limit that bounds it (given: deck front, deck rear); needed a hitch tongue limit or an axle limit',
  ],
  MachineAxleLoadsMissing: [
    { chapter: 'load', tag: 'MachineAxleLoadsMissing', machineWeight: lb(6000) },
    'asked a ramp rating by axle load; found only the machine weight, 6,000 lb; needed what each axle of the machine carries',
  ],
  SectionNotForThisWeight: [
    { chapter: 'load', tag: 'SectionNotForThisWeight', section: 'light vehicle', weight: lb(10001), most: lb(10000) },
    'asked the light vehicle section; found an article of 10,001 lb; needed 10,000 lb or less, or another section',
  ],
};

describe('words', () => {
  it.each(Object.entries(errors))('%s', (_, [error, words]) => {
    expect(describeError(error)).toBe(words);
  });
});
