/** Designs: counts, order, slices, seeds, strata. */

import { describe, expect, it } from 'vitest';
import { alternatives, levels, normal, range, type Study, triangular, uniform } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';
import { tiltDeck, wrongRows } from '../compared.js';

const made = (vary: StudyPlan['vary'], design: StudyPlan['design'], more: Partial<StudyPlan> = {}): Study =>
  rightOf(study({ base: tiltDeck, vary, design, ...more }));
const mixed: StudyPlan['vary'] = {
  coupler: alternatives({
    small: { 'trailer.coupler.tongue': '1,200 lb' },
    large: {},
    larger: { 'trailer.coupler.tongue': '2,500 lb' },
  }),
  'cargo.0.weight': normal('9,000 lb', '300 lb'),
  'cargo.0.front': uniform('105 in', '140 in'),
  'trailer.curb.weight': triangular('3,400 lb', '3,650 lb', '4,200 lb'),
};
const sampled = (kind: 'latin hypercube' | 'monte carlo', runs: number, seed = 7): Study =>
  made(mixed, { kind, runs, seed });

describe('a grid', () => {
  it('has every combination, alternatives slowest and the last path fastest', () => {
    const s = made(
      {
        'cargo.0.weight': levels('8,000 lb', '9,000 lb'),
        which: alternatives({ a: {}, b: {} }),
        'cargo.0.front': range('110 in', '130 in', 3),
      },
      { kind: 'grid' },
    );
    expect(s.count).toBe(12);
    expect(
      [...s.rows()]
        .map(({ choices, inputs }) => `${choices['which']} ${inputs['cargo.0.weight']} ${inputs['cargo.0.front']}`)
        .slice(0, 7),
    ).toEqual(['a 8000 110', 'a 8000 120', 'a 8000 130', 'a 9000 110', 'a 9000 120', 'a 9000 130', 'b 8000 110']);
  });
});

describe('any slice', () => {
  const grid = made(
    {
      which: alternatives({ a: {}, b: { 'trailer.gvwr': '12,000 lb' }, c: {} }),
      'cargo.0.weight': range('6,000 lb', '11,000 lb', 41),
      'cargo.0.front': range('100 in', '140 in', 23),
    },
    { kind: 'grid' },
  );
  it.each([
    ['grid', grid],
    ['latin hypercube', sampled('latin hypercube', 2500)],
    ['monte carlo', sampled('monte carlo', 2500)],
  ] as const)('of a %s is the same rows', (_, s) => {
    const all = [...s.rows()];
    expect(all.length).toBe(s.count);
    for (const [from, to] of [
      [0, 1],
      [1, 1025],
      [1000, 1100],
      [1023, 2049],
      [2400, s.count],
      [s.count - 1, s.count],
      [5, 5],
    ] as const) {
      expect([...s.rows(from, to)]).toEqual(all.slice(from, to));
    }
    expect(all.map(({ row }) => row)).toEqual(all.map((_each, i) => i));
  });
  it('in columns is the slice of all columns', () => {
    const all = rightOf(grid.columns());
    const part = rightOf(grid.columns(900, 2000));
    for (const [name, column] of Object.entries(part.data))
      expect(column, name).toEqual(all.data[name]?.slice(900, 2000));
    expect(part.verdict).toEqual(all.verdict.slice(900, 2000));
    expect([...part.governs].map((i) => part.governNames[i])).toEqual(
      [...all.governs.slice(900, 2000)].map((i) => all.governNames[i]),
    );
    expect(part.choices['which']).toEqual(all.choices['which']?.slice(900, 2000));
  });
  it('outside the design is cut to it, and one the wrong way round is empty', () => {
    expect([...grid.rows(-5, 2)].map(({ row }) => row)).toEqual([0, 1]);
    expect([...grid.rows(grid.count - 1, grid.count + 50)].length).toBe(1);
    expect([...grid.rows(10, 3)]).toEqual([]);
    expect(rightOf(grid.columns(10, 3)).length).toBe(0);
  });
});

describe('a seed', () => {
  it('gives the same rows on every run, another seed others', () => {
    for (const kind of ['latin hypercube', 'monte carlo'] as const) {
      expect([...sampled(kind, 400).rows()]).toEqual([...sampled(kind, 400).rows()]);
      expect([...sampled(kind, 400, 8).rows()]).not.toEqual([...sampled(kind, 400).rows()]);
    }
  });
  it('gives rows that assess confirms', () => {
    for (const kind of ['latin hypercube', 'monte carlo'] as const)
      expect(wrongRows(sampled(kind, 300)).wrong).toEqual([]);
  });
});

describe('a Latin hypercube', () => {
  it('visits each stratum of each factor exactly once', () => {
    const runs = 1237;
    const s = made(
      { 'cargo.0.weight': uniform('1,000 lb', '11,000 lb'), 'cargo.0.front': uniform('20 in', '150 in') },
      { kind: 'latin hypercube', runs, seed: 3 },
    );
    const table = rightOf(s.columns());
    const strata = (path: string, low: number, high: number) =>
      Array.from(table.data[path] ?? [], (x) =>
        Math.min(runs - 1, Math.floor(((x - low) / (high - low)) * runs + 1e-4)),
      ).sort((a, b) => a - b);
    const each = Array.from({ length: runs }, (_, i) => i);
    expect(strata('cargo.0.weight', 1000, 11000)).toEqual(each);
    expect(strata('cargo.0.front', 20, 150)).toEqual(each);
  });
  it('visits alternatives alike', () => {
    const table = rightOf(sampled('latin hypercube', 300).columns());
    for (const which of [0, 1, 2])
      expect(table.choices['coupler']?.filter((choice) => choice === which).length).toBe(100);
  });
});
