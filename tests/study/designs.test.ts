/** Designs: counts, order, slices, seeds, strata; the chance behind them; a sampled share against its closed form. */
import { describe, expect, it } from 'vitest';
import { normalQuantile, shuffledPlace, uniformAt } from '../../src/study/chance.js';
import {
  alternatives,
  levels,
  normal,
  oneAtATime,
  range,
  type Study,
  type StudyPlan,
  sample,
  study,
  triangular,
  uniform,
} from '../../src/study/index.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck, wrongRows } from './compared.js';

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
    expect(part.holds).toEqual(all.holds.slice(900, 2000));
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

describe('chance', () => {
  it('spreads evenly: 100 bins of 200,000 draws, chi squared for 99 degrees of freedom', () => {
    for (const [seed, factor] of [
      [1, 0],
      [1, 1],
      [2, 0],
      [-5, 3],
    ] as const) {
      const bins = new Float64Array(100);
      for (let row = 0; row < 200_000; row += 1) {
        const i = Math.floor(uniformAt(seed, row, factor) * 100);
        bins[i] = (bins[i] as number) + 1;
      }
      const chiSquared = bins.reduce((total, count) => total + (count - 2000) ** 2 / 2000, 0);
      expect(chiSquared).toBeGreaterThan(49.2); // 0.00001 and 0.99999 points: about 49 and 172
      expect(chiSquared).toBeLessThan(172);
    }
  });
  it('does not follow from one row, factor or seed to the next', () => {
    const correlation = (a: (row: number) => number, b: (row: number) => number): number => {
      let total = 0;
      for (let row = 0; row < 100_000; row += 1) total += (a(row) - 0.5) * (b(row) - 0.5) * 12;
      return total / 100_000;
    };
    const first = (row: number): number => uniformAt(9, row, 0);
    for (const other of [
      (row: number) => uniformAt(9, row + 1, 0),
      (row: number) => uniformAt(9, row, 1),
      (row: number) => uniformAt(10, row, 0),
      (row: number) => uniformAt(9, row + 2 ** 33, 0),
    ]) {
      expect(Math.abs(correlation(first, other))).toBeLessThan(4.5 / Math.sqrt(100_000));
    }
  });
  it('has the normal quantiles that tables of statistics print', () => {
    const printed = [
      [0.5, 0],
      [0.75, 0.67449],
      [0.9, 1.281552],
      [0.95, 1.644854],
      [0.975, 1.959964],
      [0.99, 2.326348],
      [0.995, 2.575829],
      [0.999, 3.090232],
      [0.9999, 3.719016],
    ] as const;
    for (const [p, z] of printed) {
      expect(normalQuantile(p)).toBeCloseTo(z, 5);
      expect(normalQuantile(1 - p)).toBeCloseTo(-z, 5);
    }
    expect(Number.isFinite(normalQuantile(0)) && Number.isFinite(normalQuantile(1))).toBe(true);
  });
  it('shuffles: every place once, and not in order', () => {
    for (const count of [1, 2, 3, 5, 16, 17, 100, 1000, 4097]) {
      const places = Array.from({ length: count }, (_, row) => shuffledPlace(11, 2, row, count));
      expect([...places].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
      if (count >= 16) expect(places.filter((place, i) => place === i).length).toBeLessThan(count / 2);
    }
  });
});

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
        expect(Math.abs(spread.holds.share - exact)).toBeLessThan(4 * Math.sqrt((exact * (1 - exact)) / 20_000));
        expect(spread.holds.standardError).toBeCloseTo(
          Math.sqrt((spread.holds.share * (1 - spread.holds.share)) / 20_000),
          12,
        );
        const [low, middle, high] = spread.quantiles.map(({ value }) => value - 3650) as [number, number, number];
        expect(middle).toBeCloseTo(mean, -1.5);
        expect(Math.abs(low - (mean - 1.644854 * deviation))).toBeLessThan(0.08 * deviation);
        expect(Math.abs(high - (mean + 1.644854 * deviation))).toBeLessThan(0.08 * deviation);
      }
    }
  });
});

describe('one factor at a time', () => {
  const vary = {
    'cargo.0.front': levels('110 in', '130 in'),
    'cargo.0.weight': range('8,550 lb', '9,450 lb', 3),
    coupler: alternatives({ other: { 'trailer.coupler.tongue': '2,500 lb' } }),
  };
  it('gives bars, longest first, by hand', () => {
    const { base, bars } = rightOf(oneAtATime({ base: tiltDeck, vary }, 'tongue load'));
    // Tongue: 520 + 9000 (1 - 182 / 204) at the spec's own values; 20 in of travel move 9000 x 20 / 204.
    expect(base).toBeCloseTo(520 + 9000 * (1 - 182 / 204), 9);
    expect(bars.map(({ factor }) => factor)).toEqual(['cargo.0.front', 'cargo.0.weight', 'coupler']);
    expect(bars[0]?.swing).toBeCloseTo((9000 * 20) / 204, 9);
    expect(bars[1]?.swing).toBeCloseTo(900 * (1 - 182 / 204), 9);
    expect(bars[2]?.swing).toBe(0);
  });
  it('visits the spec as it stands and each level, as assess does', () => {
    const s = made(vary, { kind: 'one at a time' });
    expect(s.count).toBe(1 + 1 + 2 + 3);
    expect(wrongRows(s).wrong).toEqual([]);
    expect([...s.rows()][0]).toMatchObject({
      choices: { coupler: 'as specified' },
      inputs: { 'cargo.0.front': 122, 'cargo.0.weight': 9000 },
    });
  });
  it('says which figures there are when asked for another', () => {
    expect(oneAtATime({ base: tiltDeck, vary }, 'tong load')).toMatchObject({
      _tag: 'Left',
      left: { tag: 'UnknownPath', nearest: expect.arrayContaining(['tongue load']) as unknown },
    });
  });
});
