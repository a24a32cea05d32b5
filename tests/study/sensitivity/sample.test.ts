import { describe, expect, it } from 'vitest';
import { type Design, normal, uniform } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { type StudyPlan, sample } from '../../helpers/untyped.js';
import { tiltDeck } from '../compared.js';

/** The standard normal share below z, by its series: any table of statistics; 0.841345 at 1. */
function phi(z: number): number {
  let [term, total] = [z, z];
  for (let k = 1; k < 200; k += 1) {
    term *= -(z * z) / (2 * k);
    total += term / (2 * k + 1);
  }
  return 0.5 + total / Math.sqrt(2 * Math.PI);
}

describe('the share that holds', () => {
  it('is that of the closed form, for a normal weight under a linear limit', () => {
    expect(phi(1)).toBeCloseTo(0.841345, 6);
    // The label alone limits at 10,350 lb here: the machine stands far enough forward of nothing else.
    const base = { ...tiltDeck, trailer: { ...tiltDeck.trailer, gvwr: '12,000 lb' } };
    for (const [mean, deviation] of [
      [8350, 225],
      [8200, 300],
      [8500, 250],
    ] as const) {
      const exact = phi((8350 - mean) / deviation);
      for (const kind of ['monte carlo', 'latin hypercube'] as const) {
        const spread = rightOf(
          sample(
            {
              base,
              vary: { 'cargo.0.weight': normal(`${mean} lb`, `${deviation} lb`) },
              design: { kind, runs: 20_000, seed: 5 },
            },
            'gross weight',
          ),
        );
        expect(spread.runs).toBe(20_000);
        const { share, standardError } = spread.verdicts.over;
        expect(Math.abs(1 - share - exact)).toBeLessThan(4 * Math.sqrt((exact * (1 - exact)) / 20_000));
        expect(standardError).toBeCloseTo(Math.sqrt((share * (1 - share)) / 20_000), 12);
        expect(Object.values(spread.verdicts).reduce((sum, each) => sum + each.share, 0)).toBeCloseTo(1, 12);
        const [low, middle, high] = spread.quantiles.map(({ value }) => value - 3650) as [number, number, number];
        expect(middle).toBeCloseTo(mean, -1.5);
        expect(Math.abs(low - (mean - 1.644854 * deviation))).toBeLessThan(0.08 * deviation);
        expect(Math.abs(high - (mean + 1.644854 * deviation))).toBeLessThan(0.08 * deviation);
      }
    }
  });
});

describe('quantiles', () => {
  it('are of shares from none to all of the runs', () => {
    const plan: StudyPlan = {
      base: tiltDeck,
      vary: { 'cargo.0.weight': uniform('8,000 lb', '9,000 lb') },
      design: { kind: 'monte carlo', runs: 20, seed: 1 },
    };
    for (const share of [NaN, -0.1, 1.1])
      expect(leftOf(sample(plan, 'gross weight', [0.5, share]))).toMatchObject({
        tag: 'UnusableVariation',
        path: 'shares',
        found: String(share),
      });
    expect(rightOf(sample(plan, 'gross weight', [0, 1])).quantiles).toHaveLength(2);
  });
  it('lie between two runs in proportion: the p-th of n runs in their order is at p (n - 1)', () => {
    const { quantiles, table, runs, unanswered } = rightOf(
      sample(
        {
          base: tiltDeck,
          vary: { 'cargo.0.weight': uniform('8,000 lb', '9,000 lb') },
          design: { kind: 'monte carlo', runs: 5, seed: 1 },
        },
        'gross weight',
        [0, 0.25, 0.3, 0.9, 1],
      ),
    );
    const [a, b, c, d, e] = [...(table.data['gross weight'] ?? [])].sort((x, y) => x - y) as [
      number,
      number,
      number,
      number,
      number,
    ];
    expect({ runs, unanswered }).toEqual({ runs: 5, unanswered: 0 });
    expect(quantiles.map(({ share }) => share)).toEqual([0, 0.25, 0.3, 0.9, 1]);
    for (const [i, value] of [a, b, b + 0.2 * (c - b), d + 0.6 * (e - d), e].entries())
      expect(quantiles[i]?.value).toBeCloseTo(value, 9);
  });
});

describe('a sample', () => {
  it('of a figure nobody measures, or without an answered run, is refused', () => {
    const design: Design = { kind: 'monte carlo', runs: 10, seed: 1 };
    expect(
      leftOf(
        sample({ base: tiltDeck, vary: { 'cargo.0.weight': uniform('1,000 lb', '2,000 lb') }, design }, 'gros weight'),
      ),
    ).toMatchObject({ tag: 'UnknownPath' });
    expect(
      leftOf(
        sample(
          { base: tiltDeck, vary: { 'trailer.axles.0.gawr': uniform('8,000 lb', '9,000 lb') }, design },
          'gross weight',
        ),
      ),
    ).toMatchObject({ tag: 'NoSolution' });
  });
});
