/** Rows by number, designs that cannot be run, runs that are stopped. */

import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Design, range, uniform } from '../../src/study/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { type StudyPlan, study } from '../helpers/untyped.js';
import { tiltDeck, wrongRows } from './compared.js';

const grid: Design = { kind: 'grid' };
const refused = (vary: StudyPlan['vary'], design: Design = grid, base: unknown = tiltDeck) =>
  leftOf(study({ base, vary, design }));

describe('a row', () => {
  const made = rightOf(
    study({ base: tiltDeck, vary: { 'cargo.0.weight': range('1,000 lb', '9,000 lb', 5) }, design: grid }),
  );
  it('that is not there has no spec', () => {
    for (const row of [-1, 5, 1.5, NaN, Infinity])
      expect(leftOf(made.specAt(row)), String(row)).toMatchObject({
        tag: 'UnusableVariation',
        path: 'row',
        needed: 'a whole number from 0 to 4',
      });
    expect(isLeft(made.specAt(4))).toBe(false);
    expect(made.errorAt(5)).toMatchObject({ tag: 'UnusableVariation', path: 'row' });
    expect(made.errorAt(4)).toBeUndefined();
  });
  it('is a whole one, whatever ends are asked for', () => {
    expect([...made.rows(0.5, 2.5)].map(({ row }) => row)).toEqual([1, 2]);
    expect([...made.rows(-3, 99)].map(({ row }) => row)).toEqual([0, 1, 2, 3, 4]);
  });
});

describe('a design', () => {
  it.each([
    { runs: 0, seed: 1 },
    { runs: 2.5, seed: 1 },
    { runs: Number.NaN, seed: 1 },
    { runs: 10, seed: 0.5 },
    { runs: 10, seed: Number.POSITIVE_INFINITY },
  ])('is refused: %o', (figures) => {
    for (const kind of ['monte carlo', 'latin hypercube'] as const)
      expect(refused({ 'cargo.0.weight': uniform('1 lb', '2 lb') }, { kind, ...figures }).tag).toBe(
        'UnusableVariation',
      );
  });
  it('may be of one run, by any whole seed', () => {
    for (const kind of ['monte carlo', 'latin hypercube'] as const)
      for (const seed of [0, -3]) {
        const vary = { 'cargo.0.weight': uniform('8,000 lb', '9,000 lb') };
        expect(wrongRows(rightOf(study({ base: tiltDeck, vary, design: { kind, runs: 1, seed } })))).toEqual({
          compared: 1,
          answered: 1,
          wrong: [],
        });
      }
  });
  it('of nothing is the spec as it stands', () => {
    const made = rightOf(study({ base: tiltDeck, vary: {}, design: grid }));
    expect(wrongRows(made)).toEqual({ compared: 1, answered: 1, wrong: [] });
  });
});

describe('a run that is stopped', () => {
  const plan: StudyPlan = {
    base: tiltDeck,
    vary: { 'cargo.0.weight': range('5,000 lb', '9,000 lb', 5000) },
    design: grid,
  };
  it('before it begins says so', () => {
    const made = rightOf(study({ ...plan, signal: AbortSignal.abort() }));
    expect([...made.rows()]).toEqual([
      {
        row: 0,
        choices: {},
        inputs: {},
        answered: false,
        reason: 'Aborted',
        error: { chapter: 'study', tag: 'Aborted', afterRows: 0 },
      },
    ]);
    expect(leftOf(made.columns())).toMatchObject({ tag: 'Aborted', afterRows: 0 });
  });
  it('on its way ends with a row that says so, after whole rows', () => {
    const stop = new AbortController();
    const made = rightOf(
      study({
        ...plan,
        signal: stop.signal,
        onProgress: (done) => {
          if (done >= 2048) stop.abort();
        },
      }),
    );
    const rows = [...made.rows()];
    expect(rows.at(-1)).toMatchObject({ answered: false, error: { tag: 'Aborted' } });
    expect(rows.length).toBeLessThan(5000);
    expect(rows.slice(0, -1).every(({ answered }) => answered)).toBe(true);
    expect(leftOf(made.columns()).tag).toBe('Aborted');
  });
  it('in a slice names the row it stopped before', () => {
    const stop = new AbortController();
    const made = rightOf(study({ ...plan, signal: stop.signal, onProgress: () => stop.abort() }));
    expect([...made.rows(2000, 4500)].at(-1)).toMatchObject({ row: 3024, error: { tag: 'Aborted', afterRows: 1024 } });
  });
  it('tells its progress up to the end', () => {
    const told: (readonly [number, number])[] = [];
    const made = rightOf(study({ ...plan, onProgress: (done, of) => told.push([done, of]) }));
    expect([...made.chunks()].length).toBe(5);
    expect(told.at(-1)).toEqual([5000, 5000]);
    expect(told.map(([done]) => done)).toEqual([...told.map(([done]) => done)].sort((a, b) => a - b));
  });
});
