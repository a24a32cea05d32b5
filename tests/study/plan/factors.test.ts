import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { type Design, levels, normal, range, triangular, uniform } from '../../../src/study/index.js';
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
