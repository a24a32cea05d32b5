/** Figures as they are printed beside a drawing, and the steps of its axes. */
import { describe, expect, it } from 'vitest';
import {
  axisText,
  bare,
  capacityText,
  deckText,
  lengthText,
  lengthUnit,
  loadText,
  roundStep,
  shareText,
  usedText,
  weightUnit,
} from '../../../src/figures/drawing/numbers.js';
import { foot, inch, lb, ratio } from '../../../src/units/index.js';

describe('a figure in print', () => {
  it('is a load up, away from zero, and a capacity down, in whole pounds or kilograms', () => {
    expect([loadText(lb('1490.2'), 'us'), loadText(lb('-1490.2'), 'us')]).toEqual(['1,491 lb', '-1,491 lb']);
    expect(capacityText(lb('1490.9'), 'us')).toBe('1,490 lb');
    // 1,490 lb = 675.853 kg.
    expect([loadText(lb(1490), 'metric'), capacityText(lb(1490), 'metric')]).toEqual(['676 kg', '675 kg']);
    expect([bare('1,491 lb'), bare('676 kg'), bare('lb 3')]).toEqual(['1,491', '676', 'lb 3']);
  });
  it('is a place to a sixteenth or a millimetre, an end of a window into the window', () => {
    const place = inch('100.03');
    expect([undefined, 'front', 'rear'].map((end) => lengthText(place, 'us', end as never))).toEqual([
      lengthText(inch(100), 'us'),
      lengthText(inch(100), 'us'),
      lengthText(inch('100.0625'), 'us'),
    ]);
    // 100.03 in = 2,540.762 mm.
    expect([undefined, 'front', 'rear'].map((end) => lengthText(place, 'metric', end as never))).toEqual([
      '2.541 m',
      '2.54 m',
      '2.541 m',
    ]);
    expect([deckText(foot('20.5'), 'us'), deckText(foot(20), 'metric')]).toEqual(['20.5 ft', '6.1 m']);
  });
  it('is a share used up, and a share of load to the nearest tenth', () => {
    expect([usedText(ratio('0.93101')), shareText(ratio('0.93101'))]).toEqual(['93.2 %', '93.1 %']);
  });
  it('has the unit of the reader', () => {
    expect([weightUnit('us'), lengthUnit('us')]).toEqual([
      { name: 'lb', pounds: 1 },
      { name: 'ft', inches: 12 },
    ]);
    // 1 kg = 2.20462262 lb, 1 m = 39.3700787 in (NIST SP 811).
    expect(weightUnit('metric').pounds).toBeCloseTo(2.20462262, 8);
    expect(lengthUnit('metric').inches).toBeCloseTo(39.3700787, 7);
  });
});

describe('an axis', () => {
  it('has numbers with commas, to a hundredth', () => {
    expect([0, 12, 1234, -1234567, 0.256, 1234.5678].map(axisText)).toEqual([
      '0',
      '12',
      '1,234',
      '-1,234,567',
      '0.26',
      '1,234.57',
    ]);
  });
  it('has steps of 1, 2 or 5 times a power of ten, no more than asked, and one step where there is no range', () => {
    expect([10, 20, 21, 50, 51, 100, 101].map((range) => roundStep(range, 10))).toEqual([1, 2, 5, 5, 10, 10, 20]);
    expect([roundStep(0.7, 4), roundStep(9000, 4)]).toEqual([0.2, 5000]);
    for (const none of [0, -5, Number.NaN, Number.POSITIVE_INFINITY]) expect(roundStep(none, 4)).toBe(1);
  });
});
