/** A definite answer from half a spec is the answer of the whole one. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson as assess } from '../../src/assessment/index.js';
import { boundsFrom } from '../../src/choose/index.js';
import { questionsOf } from '../../src/choose/sureness/asked.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';

const rigs = process.env.LONG === undefined ? 40 : 1000;

/** Facts that somebody may not know. */
const removable = [
  'trailer.curb.tongue',
  'trailer.axles.0.at',
  'trailer.axles.1.at',
  'cargo.0.at',
  'cargo.0.front',
  'cargo.0.balancePoint',
  'tow.front',
  'tow.rear',
  'tow.wheelbase',
  'tow.overhang',
  'trailer.sharing',
];

const truck = tiltDeck().tow;
const rig = fc.oneof(
  randomSpec.map((spec) => ({ ...spec, tow: truck })),
  randomSpec,
  fc
    .record({ weight: fc.integer({ min: 40, max: 110 }), front: fc.integer({ min: 62, max: 134 }) })
    .map(({ weight, front }) =>
      changed(changed(tiltDeck(), 'cargo.0.weight', `${weight * 100} lb`), 'cargo.0.front', `${front} in`),
    ),
);

const isThere = (spec: unknown, path: string): boolean =>
  path.split('.').reduce<unknown>((part, key) => (part as Record<string, unknown> | undefined)?.[key], spec) !==
  undefined;

describe('boundsFrom', () => {
  it('never says anything definite that the whole spec contradicts', () => {
    const counts = { definite: 0, depends: 0 };
    const cases = fc.sample(fc.tuple(rig, fc.subarray(removable, { minLength: 1, maxLength: 4 })), {
      numRuns: rigs,
      seed: 61,
    });
    for (const [spec, paths] of cases) {
      const whole = assess(spec);
      const half = paths
        .filter((path) => isThere(spec, path))
        .reduce<unknown>((left, path) => changed(left, path, undefined), spec);
      const bounds = boundsFrom(half);
      if (isLeft(whole) || isLeft(bounds)) continue;
      const reserves = new Map(questionsOf(whole.right).map(({ id, figure }) => [id, figure.value.value.toNumber()]));
      for (const { id, answer, least, most } of bounds.right.checks) {
        const reserve = reserves.get(id);
        if (reserve === undefined) continue;
        counts[answer === 'depends' ? 'depends' : 'definite'] += 1;
        const told = JSON.stringify({ id, paths, spec });
        if (answer !== 'depends') {
          expect(reserve >= 0 ? 'within' : 'over', told).toBe(answer);
          expect(reserve, told).toBeGreaterThanOrEqual(least.value.toNumber() - 1e-4);
          expect(reserve, told).toBeLessThanOrEqual(most.value.toNumber() + 1e-4);
        }
      }
    }
    expect(counts.definite).toBeGreaterThan(rigs);
    expect(counts.depends).toBeGreaterThan(rigs / 10);
  }, 1_800_000);

  const tires = { designation: 'ST225/75R15 LRD', count: 2, fitment: 'single', molded: { single: '2,540 lb' } };
  it('tells of a used trailer with four tires and a gross weight that the tires suffice, wherever it stands', () => {
    const spec = {
      trailer: { hitch: 'ball', axles: [{ tires }, { tires }], sharing: 'equalised', curb: { weight: '9,500 lb' } },
    };
    const { checks, unknown, ask } = rightOf(boundsFrom(spec));
    expect(rightOf(assess(spec)).checks).toEqual([]);
    expect(checks.map(({ answer }) => answer)).toEqual(['within', 'within', 'within', 'within', 'within']);
    // By hand: with nothing on the tongue each of four tires carries 9,500 / 4 = 2,375 lb of 2,540 lb.
    expect(checks.find(({ id }) => id === 'axle-1/tire')!.least.value.toNumber()).toBeCloseTo(165, 5);
    expect(unknown.map(({ path }) => path)).toContain('trailer.curb.tongue');
    expect(ask).toBeUndefined();
  });
  it('names the one question where it depends', () => {
    const { front: _front, ...piece } = (tiltDeck().cargo as unknown as [Record<string, unknown>])[0];
    const { checks, ask } = rightOf(boundsFrom(changed(tiltDeck(), 'cargo.0', piece)));
    expect(checks.find(({ id }) => id === 'gvwr')?.answer).toBe('within');
    expect(checks.find(({ id }) => id === 'tow/ball-mount/tongue')?.answer).toBe('depends');
    expect(ask).toBe('cargo.0.at');
  });
  it('asks nothing of a spec that tells all', () => {
    const { unknown, checks, ask } = rightOf(boundsFrom(tiltDeck()));
    expect([unknown, ask]).toEqual([[], undefined]);
    expect(checks.every(({ answer }) => answer === 'within')).toBe(true);
  });
});
