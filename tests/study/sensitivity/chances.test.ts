/** Chances against the normal distribution itself, and against a study of each build alone. */
import { describe, expect, it } from 'vitest';
import { alternatives, chances, levels, normal, type StudyPlan, sample } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../compared.js';

const braked = {
  ...tiltDeck,
  trailer: {
    ...tiltDeck.trailer,
    axles: tiltDeck.trailer.axles.map((axle) => ({ ...axle, brakes: { left: '4,000 lb', right: '4,000 lb' } })),
  },
};
const vary: StudyPlan['vary'] = {
  label: alternatives({
    high: {},
    low: { 'trailer.gvwr': '12,650 lb' },
    wrong: { 'trailer.axles.0.gawr': '9,000 lb' },
  }),
  'cargo.0.weight': normal('9,000 lb', '200 lb'),
};
const { builds, runs } = rightOf(chances({ base: braked as never, vary, runs: 20_000, seed: 7 }));

describe('chances', () => {
  it('are shares of the runs of each build, the surest first', () => {
    expect(runs).toBe(20_000);
    expect(builds.map(({ choices }) => choices['label'])).toEqual(['high', 'low', 'wrong']);
    const [high, low, wrong] = builds;
    // The label is met up to 9,000 lb of machine: half of the draws.
    expect(Math.abs((low?.verdicts.over.share as number) - 0.5)).toBeLessThan(4 * Math.sqrt(0.25 / 20_000));
    expect(high?.verdicts.over.share).toBe(0);
    expect(wrong).toMatchObject({ unanswered: 20_000, verdicts: { within: { share: 0 } } });
  });
  it('are those of a sample of the build alone, draw by draw', () => {
    const { 'cargo.0.weight': weight } = vary as { 'cargo.0.weight': ReturnType<typeof normal> };
    const alone = rightOf(
      sample(
        {
          base: braked as never,
          vary: { 'cargo.0.weight': weight },
          design: { kind: 'monte carlo', runs: 20_000, seed: 7 },
        },
        'gross weight',
      ),
    );
    expect(builds[0]?.verdicts).toEqual(alone.verdicts);
  });
  it('differ by less than two samples of their own would let one see', () => {
    const [high, low] = builds;
    expect(high?.toBest).toEqual({ share: 0, standardError: 0 });
    const share = low?.toBest.share as number;
    expect(share).toBeCloseTo((low?.verdicts.within.share as number) - (high?.verdicts.within.share as number), 12);
    const apart = Math.hypot(
      low?.verdicts.within.standardError as number,
      high?.verdicts.within.standardError as number,
    );
    expect(low?.toBest.standardError).toBeLessThanOrEqual(apart + 1e-12);
  });
  it('are refused for a plan that cannot be drawn', () => {
    expect(leftOf(chances({ base: braked as never, vary, runs: 0, seed: 7 }))).toMatchObject({ path: 'design.runs' });
    expect(
      leftOf(chances({ base: braked as never, vary: { 'cargo.0.wight': levels('1 lb') }, runs: 5, seed: 7 })).tag,
    ).toBe('UnknownPath');
  });
});
