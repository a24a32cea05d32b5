/** Every error of the chapter is one sentence that names the figures and says what to do. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import type { LoadError } from '../../src/load/index.js';
import { inch, lb, toWire } from '../../src/units/index.js';

const errors: { readonly [T in LoadError['tag']]: [Extract<LoadError, { tag: T }>, string] } = {
  AxlesNotBehindCoupler: [
    { chapter: 'load', tag: 'AxlesNotBehindCoupler', axlesAt: toWire(inch(0)), path: 'trailer.axles' },
    'trailer.axles: the distance from coupler to axles is 0 in; it must be greater than zero',
  ],
  NothingWeighed: [
    { chapter: 'load', tag: 'NothingWeighed', gross: toWire(lb(0)) },
    'the total weight is 0 lb; it must be greater than zero',
  ],
  TongueAboveWeight: [
    { chapter: 'load', tag: 'TongueAboveWeight', of: 'trailer', tongue: toWire(lb(101)), weight: toWire(lb(100)) },
    'the tongue load of trailer is 101 lb; it must be at most its weight, 100 lb',
  ],
  NoLimits: [
    { chapter: 'load', tag: 'NoLimits' },
    'no rating limits the payload; give the GVWR from the label, or another rating',
  ],
  RampTooShort: [
    { chapter: 'load', tag: 'RampTooShort', height: toWire(inch(34)), length: toWire(inch(30)) },
    'the ramp length is 30 in; it must be at least the deck height, 34 in',
  ],
  NothingGiven: [
    { chapter: 'load', tag: 'NothingGiven', what: 'parts of the tiedown' },
    'no parts of the tiedown given; give at least one',
  ],
  NothingLimits: [
    { chapter: 'load', tag: 'NothingLimits', what: 'the heaviest machine', given: ['deck front', 'deck rear'] },
    'none of the given limits (deck front, deck rear) bounds the heaviest machine; give a hitch tongue limit or an axle limit',
  ],
  MachineAxleLoadsMissing: [
    { chapter: 'load', tag: 'MachineAxleLoadsMissing', machineWeight: toWire(lb(6000)) },
    'the ramps are rated by axle load and only the machine weight, 6,000 lb, is known; give the load on each axle of the machine',
  ],
  SectionNotForThisWeight: [
    {
      chapter: 'load',
      tag: 'SectionNotForThisWeight',
      section: 'light vehicle',
      weight: toWire(lb(10001)),
      most: toWire(lb(10000)),
    },
    'the weight of an article tied by the light vehicle section is 10,001 lb; it must be at most 10,000 lb; otherwise use another section',
  ],
};

describe('words', () => {
  it.each(Object.entries(errors))('%s', (_, [error, words]) => {
    expect(describeError(error)).toBe(words);
  });
});
