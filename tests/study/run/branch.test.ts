/** The rows for which a recorded branch is valid: inside the range of every input, and of every decision on it. */
import { describe, expect, it } from 'vitest';
import { branchOf } from '../../../src/study/run/branch.js';
import { constant, decide, type Given, given } from '../../../src/trace/index.js';
import { inch, lb } from '../../../src/units/index.js';

const leaf = (path: string, between?: readonly [number, number]): Given =>
  ({
    ...given(path, lb(500), 'stated', path).why,
    ...(between && { between: between.map((pounds) => lb(pounds).value) }),
  }) as unknown as Given;
const leaves = new Map([
  ['weight', leaf('weight', [0, 9000])],
  ['free', leaf('free')],
  ['elsewhere', leaf('elsewhere', [0, 9000])],
]);
const [all, none] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
const inputs = (...paths: readonly string[]) => ({
  paths,
  units: paths.map((path) => (path === 'elsewhere' ? inch(1).unit : lb(1).unit)),
});

describe('a branch', () => {
  it('holds in the range of its inputs', () => {
    const { inputBounds, allBounds } = branchOf(leaves, inputs('weight', 'free'), []);
    expect(inputBounds).toEqual([
      { column: 0, low: 0, high: 9000 },
      { column: 1, low: none, high: all },
    ]);
    expect(allBounds).toEqual(inputBounds);
  });
  it('holds nowhere for an input that it has not, or has in another unit', () => {
    for (const path of ['missing', 'elsewhere']) {
      const [bound] = branchOf(leaves, inputs(path), []).allBounds;
      expect((bound?.low ?? 0) > (bound?.high ?? 0), path).toBe(true);
    }
  });
  it('holds where the decisions on it fall out as recorded', () => {
    const weight = { value: lb(500), why: leaves.get('weight') as Given };
    const { allBounds, inputBounds } = branchOf(leaves, inputs('weight'), [
      decide(weight, '<', constant(lb(6000))),
      decide(weight, '>', constant(lb(100))),
    ]);
    expect(inputBounds).toEqual([{ column: 0, low: 0, high: 9000 }]);
    const [{ low, high } = { low: 0, high: 0 }] = allBounds;
    expect(low).toBeCloseTo(100, 3);
    expect(low).toBeGreaterThan(100);
    expect(high).toBeCloseTo(6000, 3);
    expect(high).toBeLessThan(6000);
  });
});
