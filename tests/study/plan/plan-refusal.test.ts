/** What comes without types is a typed Left, whatever it is; rows that memory does not hold are refused with their count. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { levels, range, type StudyPlan, solveFor, study } from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../compared.js';

const grid = { kind: 'grid' };
const vary = { 'cargo.0.weight': levels('8,000 lb') };
const plan = { base: tiltDeck as never, vary, design: grid };
const over = (variation: unknown): unknown => ({ ...plan, vary: { 'cargo.0.weight': variation } });

describe('a plan without types', () => {
  it.each<[string, unknown, string]>([
    ['nothing', undefined, 'plan'],
    ['a text', 'plan', 'plan'],
    ['no variations', { ...plan, vary: null }, 'vary'],
    ['a list of variations', { ...plan, vary: [] }, 'vary'],
    ['no design', { ...plan, design: null }, 'design'],
    ['a design of no kind', { ...plan, design: {} }, 'design.kind'],
    ['an unknown design', { ...plan, design: { kind: 'spiral' } }, 'design.kind'],
    ['no variation', over(null), 'cargo.0.weight'],
    ['a variation of no kind', over({}), 'cargo.0.weight'],
    ['levels of numbers', over({ kind: 'levels', texts: [8000] }), 'cargo.0.weight'],
    ['levels of nothing', over({ kind: 'levels' }), 'cargo.0.weight'],
    ['a range from a number', over({ kind: 'range', from: 1, to: '2 lb', count: 3 }), 'cargo.0.weight'],
    ['a range to nothing', over({ kind: 'range', from: '1 lb', count: 3 }), 'cargo.0.weight'],
    ['a range of a text', over({ kind: 'range', from: '1 lb', to: '2 lb', count: '3' }), 'cargo.0.weight'],
    ['a chance of no shape', over({ kind: 'chance', shape: 'toString', figures: [] }), 'cargo.0.weight'],
    ['a chance of one figure', over({ kind: 'chance', shape: 'uniform', figures: ['1 lb'] }), 'cargo.0.weight'],
    ['alternatives of nothing', over({ kind: 'alternatives', choices: null }), 'cargo.0.weight.choices'],
    ['an alternative of nothing', over({ kind: 'alternatives', choices: { a: null } }), 'cargo.0.weight.choices.a'],
    ['options of nothing', over({ kind: 'added' }), 'cargo.0.weight.options'],
    ['an option of nothing', over({ kind: 'added', options: { a: 1 } }), 'cargo.0.weight.options.a'],
    ['links of nothing', over({ kind: 'linked' }), 'cargo.0.weight.figures'],
    ['a link of nothing', over({ kind: 'linked', figures: { 'trailer.gvwr': null } }), 'trailer.gvwr'],
    ['a measure that is no function', { ...plan, measure: 3 }, 'measure'],
    ['a listener that is no function', { ...plan, onProgress: 'yes' }, 'onProgress'],
    ['a signal that is none', { ...plan, signal: 1 }, 'signal'],
  ])('%s', (_, untyped, path) => {
    const error = leftOf(study(untyped as StudyPlan));
    expect(error).toMatchObject({ chapter: 'study', tag: 'UnusableVariation', path });
    expect(describeError(error)).toMatch(/cannot use .*; give /);
  });
  it.each([null, undefined, 3, 'spec', []])('a spec that is %s is what the reader refuses', (base) => {
    expect(leftOf(study({ base: base as never, vary: {}, design: { kind: 'grid' } })).tag).toBe('UndecodableSpec');
  });
});

describe('columns', () => {
  it('of more rows than memory holds are refused at once, with the count', () => {
    const wide = {
      'cargo.0.weight': range('1,000 lb', '9,000 lb', 30_000),
      'cargo.0.front': range('1 in', '99 in', 30_000),
    };
    const made = rightOf(study({ base: tiltDeck as never, vary: wide, design: { kind: 'grid' } }));
    const begun = performance.now();
    const error = leftOf(made.columns());
    expect(performance.now() - begun).toBeLessThan(1_000);
    expect(error).toMatchObject({ tag: 'TooManyRows', count: 900_000_000 });
    expect(describeError(error)).toMatch(
      /900,000,000 rows do not fit in memory as columns; ask for at most [\d,]+ at a time/,
    );
    expect(rightOf(made.columns(0, 1000)).length).toBe(1000);
  });
});

describe('solving', () => {
  it('hands out no figure that the spec cannot have', () => {
    // The cargo weighs nothing where gross is the empty weight: a piece of no weight is no piece.
    const empty = leftOf(
      solveFor(tiltDeck as never, 'trailer.curb.tongue', ({ weights }) => weights.curb && weights.balance?.axleLoad),
    );
    expect(empty).toMatchObject({ tag: 'NoSolution' });
  });
});
