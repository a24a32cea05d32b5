/** Plans that cannot be run: paths, alternatives, sizes, specs. Each is refused with its place. */

import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { alternatives, type Design, levels, range, uniform } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';
import { tiltDeck, wrongRows } from '../compared.js';

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
  it('is one row more than a billion', () => {
    const rows = (weights: number, places: number) =>
      study({
        base: tiltDeck,
        vary: {
          'cargo.0.weight': range('5,000 lb', '9,000 lb', weights),
          'cargo.0.front': range('100 in', '140 in', places),
        },
        design: grid,
      });
    expect(rightOf(rows(100_000, 10_000)).count).toBe(1_000_000_000);
    expect(leftOf(rows(1001, 999_001))).toMatchObject({ tag: 'TooManyVariants', count: 1_000_000_001 });
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

describe('alternatives', () => {
  it('without a choice are refused', () =>
    expect(refused({ tires: alternatives({}) })).toMatchObject({
      tag: 'UnusableVariation',
      path: 'tires',
      found: 'an empty list',
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
