import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import {
  type Chance,
  type Design,
  type Levels,
  levels,
  normal,
  type Range,
  range,
  triangular,
  uniform,
} from '../../../src/study/index.js';
import { factorOf } from '../../../src/study/plan/factors.js';
import { type Given, given } from '../../../src/trace/index.js';
import { lb } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';
import { tiltDeck, wrongRows } from '../compared.js';

const grid: Design = { kind: 'grid' };
const refused = (vary: StudyPlan['vary'], design: Design = grid, base: unknown = tiltDeck) =>
  leftOf(study({ base, vary, design }));

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
    expect(describeError(error)).toMatch(/^cargo\.0\.weight: cannot use .+; give .+/);
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

const leaf = { ...given('weight', lb(9000), 'stated', 'cargo.0.weight').why, kind: 'given' } as Given;

describe('a range', () => {
  const read = (count: number) => factorOf('cargo.0.weight', range('1 lb', '11 lb', count), leaf, 4);
  it('has up to ten million levels, evenly spaced, and one if so asked', () => {
    expect(leftOf(read(10_000_001))).toMatchObject({ tag: 'TooManyVariants', count: 10_000_001, most: 10_000_000 });
    const { levels: count, levelAt, axis, unit, basis } = rightOf(read(10_000_000));
    expect({ count, axis, unit, basis }).toEqual({ count: 10_000_000, axis: 4, unit: 'lb', basis: 'stated' });
    expect([levelAt(0).toNumber(), levelAt(9_999_999).toNumber()]).toEqual([1, 11]);
    expect([0, 1, 2, 3, 4].map((i) => rightOf(read(5)).levelAt(i).toNumber())).toEqual([1, 3.5, 6, 8.5, 11]);
    expect(rightOf(read(1)).levelAt(0).toNumber()).toBe(1);
  });
  it('may touch the ends of what the spec takes', () => {
    const between = [lb(1).value, lb(11).value] as const;
    const within = (low: string, high: string) => factorOf('w', levels(low, high), { ...leaf, between }, 0);
    expect(rightOf(within('1 lb', '11 lb')).levels).toBe(2);
    expect(leftOf(within('0.999 lb', '11 lb'))).toMatchObject({ tag: 'UnusableVariation', path: 'w' });
    expect(leftOf(within('1 lb', '11.001 lb')).tag).toBe('UnusableVariation');
    // The deviation of a normal distribution is no figure of the spec.
    expect(rightOf(factorOf('w', normal('5 lb', '0.1 lb'), { ...leaf, between }, 0)).levels).toBe(0);
    expect(leftOf(factorOf('w', normal('0.1 lb', '5 lb'), { ...leaf, between }, 0)).tag).toBe('UnusableVariation');
  });
});

describe('a drawn figure', () => {
  const drawn = (variation: Levels | Range | Chance) => rightOf(factorOf('cargo.0.weight', variation, leaf, 0)).atShare;
  const shares = [0, 0.001, 0.1, 0.25, 0.4999, 0.5, 0.7, 0.75, 0.9, 0.999];
  it('has its share below it: the distribution functions of a textbook of statistics', () => {
    for (const likely of [200, 300, 400]) {
      const at = drawn(triangular('200 lb', `${likely} lb`, '400 lb'));
      const below = (x: number): number =>
        x < likely
          ? (x - 200) ** 2 / (200 * (likely - 200))
          : 1 - (400 - x) ** 2 / (likely === 400 ? 1 : 200 * (400 - likely));
      for (const share of shares) expect(below(at(share)), `${likely}, ${share}`).toBeCloseTo(share, 5);
      expect([at(0), at(1)]).toEqual([200, 400]);
    }
    for (const share of shares) {
      expect(drawn(uniform('200 lb', '400 lb'))(share)).toBeCloseTo(200 + 200 * share, 4);
      expect(drawn(range('200 lb', '400 lb', 3))(share)).toBeCloseTo(200 + 200 * share, 4);
    }
    expect(drawn(triangular('300 lb', '300 lb', '300 lb'))(0.7)).toBe(300);
  });
  it('of a normal distribution is cut at four deviations', () => {
    const at = drawn(normal('300 lb', '10 lb'));
    expect([at(0), at(1e-6), at(0.5), at(1 - 1e-6), at(1)]).toEqual([260, 260, 300, 340, 340]);
    // One deviation: 0.158655 below minus one (any table of statistics).
    expect(at(0.158655)).toBeCloseTo(290, 3);
    expect(at(0.841345)).toBeCloseTo(310, 3);
  });
  it('of levels is each of them alike', () => {
    const at = drawn(levels('100 lb', '300 lb', '200 lb'));
    expect([0, 0.33, 0.34, 0.66, 0.67, 0.999, 1].map(at)).toEqual([100, 100, 300, 300, 200, 200, 200]);
  });
  it('has four decimals', () => {
    expect(drawn(uniform('0 lb', '1 lb'))(1 / 3)).toBe(0.3333);
    expect(drawn(uniform('0 lb', '1 lb'))(2 / 3)).toBe(0.6667);
  });
});
