/** Studies that are refused, rows that are not answered, runs that are stopped: each says so, none throws. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  alternatives,
  type Design,
  levels,
  normal,
  range,
  type StudyPlan,
  sample,
  study,
  triangular,
  uniform,
} from '../../src/study/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { tiltDeck, wrongRows } from './compared.js';

const grid: Design = { kind: 'grid' };
const refused = (vary: StudyPlan['vary'], design: Design = grid, base: unknown = tiltDeck) =>
  leftOf(study({ base, vary, design }));

describe('a path', () => {
  it('that holds no figure is refused with the nearest that do', () => {
    expect(refused({ 'cargo.0.wieght': levels('1 lb') })).toMatchObject({
      tag: 'UnknownPath',
      path: 'cargo.0.wieght',
      nearest: expect.arrayContaining(['cargo.0.weight']) as unknown,
    });
    for (const path of [
      '',
      'cargo',
      'cargo.0',
      'cargo.1.weight',
      'cargo.0.name',
      'trailer.axles.0.tires.count',
      '__proto__',
      'constructor.prototype',
      '__proto__.polluted',
    ]) {
      expect(refused({ [path]: levels('1 lb') }).tag, path).toBe('UnknownPath');
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('levels', () => {
  it.each([
    ['none', levels()],
    ['a count of none', range('1,000 lb', '2,000 lb', 0)],
    ['a part of a count', range('1,000 lb', '2,000 lb', 2.5)],
    ['a count of NaN', range('1,000 lb', '2,000 lb', Number.NaN)],
    ['NaN', levels('NaN')],
    ['NaN lb', levels('NaN lb')],
    ['Infinity lb', levels('Infinity lb')],
    ['a bare number', levels('9000')],
    ['an empty text', levels('')],
    ['another dimension', levels('9,000 in')],
    ['a pressure', range('60 psi', '80 psi', 3)],
    ['words', levels('heavy')],
    ['less than the input may be', levels('9,000 lb', '-1 lb')],
    ['more than the input may be', levels('200,001 lb')],
    ['a range out of bounds', range('0 lb', '300,000 lb', 3)],
    ['a distribution in a grid', uniform('8,000 lb', '9,000 lb')],
    ['low above high', uniform('9,000 lb', '8,000 lb')],
    ['a triangle out of order', triangular('8,000 lb', '7,000 lb', '9,000 lb')],
    ['a number where text belongs', levels(9000 as unknown as string)],
    ['nothing where text belongs', levels(undefined as unknown as string)],
  ] as const)('%s: refused with the path, what was found, what is needed', (_, variation) => {
    const error = refused({ 'cargo.0.weight': variation });
    expect(error).toMatchObject({ chapter: 'study', tag: 'UnusableVariation', path: 'cargo.0.weight' });
    expect(describeError(error)).toMatch(/^cargo\.0\.weight: asked .*; found .+; needed .+/);
  });
  it('in another unit of the dimension are taken', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'cargo.0.weight': levels('4,000 kg', '4.2 t', '9,000 lb'), 'cargo.0.front': levels(`10' 2"`, '3.1 m') },
        design: grid,
      }),
    );
    expect(wrongRows(made)).toEqual({ compared: 6, answered: 6, wrong: [] });
  });
  it('drawn outside what the input may be are rows with an error, not figures', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'cargo.0.weight': normal('500 lb', '400 lb') },
        design: { kind: 'monte carlo', runs: 500, seed: 2 },
      }),
    );
    const { wrong, answered } = wrongRows(made);
    expect(wrong).toEqual([]);
    expect(answered).toBeLessThan(500);
    expect([...made.rows()].filter((row) => !row.answered && row.error.tag === 'UndecodableSpec').length).toBe(
      500 - answered,
    );
  });
});

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
  });
  it('is a whole one, whatever ends are asked for', () => {
    expect([...made.rows(0.5, 2.5)].map(({ row }) => row)).toEqual([1, 2]);
    expect([...made.rows(-3, 99)].map(({ row }) => row)).toEqual([0, 1, 2, 3, 4]);
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
});

describe('too much', () => {
  it('is refused with its count before anything runs', () => {
    const started = performance.now();
    const error = refused({
      'cargo.0.weight': range('1 lb', '100,000 lb', 1_000_000),
      'cargo.0.front': range('1 in', '1,000 in', 1_000_000),
    });
    expect(error).toMatchObject({ tag: 'TooManyVariants', count: 1e12, most: 1e9 });
    expect(describeError(error)).toContain('1,000,000,000,000');
    expect(performance.now() - started).toBeLessThan(5_000);
  });
  it('of one range, of runs, of alternatives', () => {
    expect(refused({ 'cargo.0.weight': range('1 lb', '100,000 lb', 1e12) })).toMatchObject({
      tag: 'TooManyVariants',
      count: 1e12,
    });
    expect(
      refused({ 'cargo.0.weight': uniform('1 lb', '2 lb') }, { kind: 'monte carlo', runs: 1e12, seed: 1 }),
    ).toMatchObject({ tag: 'TooManyVariants', count: 1e12 });
    const hundred = alternatives(Object.fromEntries(Array.from({ length: 100 }, (_, i) => [`a${i}`, {}])));
    expect(refused({ a: hundred, b: hundred, c: hundred })).toMatchObject({
      tag: 'TooManyVariants',
      count: 1e6,
      most: 5000,
    });
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
  it('of nothing is the spec as it stands', () => {
    const made = rightOf(study({ base: tiltDeck, vary: {}, design: grid }));
    expect(wrongRows(made)).toEqual({ compared: 1, answered: 1, wrong: [] });
  });
});

describe('alternatives', () => {
  it('without a choice are refused', () =>
    expect(refused({ tires: alternatives({}) })).toMatchObject({
      tag: 'UnusableVariation',
      path: 'tires',
      found: 'no alternatives',
    }));
  it('that make a spec nobody can read are refused with the place', () => {
    expect(
      refused({ tires: alternatives({ good: {}, odd: { 'trailer.axles.0.tires.colour': 'red' } }) }),
    ).toMatchObject({ tag: 'UndecodableSpec', path: 'trailer.axles.0.tires.colour' });
    expect(refused({ tires: alternatives({ evil: { '__proto__.polluted': 1 } }) }).tag).toBe('UndecodableSpec');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
  it('never change the spec they are put into', () => {
    const before = JSON.stringify(tiltDeck);
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { a: alternatives({ one: { 'cargo.0.weight': '1 lb', 'trailer.axles.0.gawr': '6,000 lb' } }) },
        design: grid,
      }),
    );
    expect([...made.rows()].length).toBe(1);
    expect(JSON.stringify(tiltDeck)).toBe(before);
  });
  it('change one of two parts that are one object in memory', () => {
    const [axle] = tiltDeck.trailer.axles as [Record<string, unknown>];
    const base = { ...tiltDeck, trailer: { ...tiltDeck.trailer, axles: [{ ...axle }, { ...axle, at: '221 in' }] } };
    const made = rightOf(
      study({ base, vary: { 'trailer.axles.0.tires.molded.single': levels('3,520 lb', '3,600 lb') }, design: grid }),
    );
    expect(wrongRows(made)).toEqual({ compared: 2, answered: 2, wrong: [] });
    const second = rightOf(made.specAt(1)) as typeof tiltDeck;
    expect(second.trailer.axles[1]?.['tires']).toEqual(axle['tires']);
  });
});

describe('the spec itself', () => {
  it('that cannot be read is the answer', () => {
    for (const base of [undefined, null, 1, 'spec', [], {}, { trailer: { hitch: 'ball', axles: [] } }])
      expect(isLeft(study({ base, vary: {}, design: grid }))).toBe(true);
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
      { row: 0, choices: {}, inputs: {}, answered: false, error: { chapter: 'study', tag: 'Aborted', afterRows: 0 } },
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
