/** Figures that move together, options that add weight, alternatives that touch one part. */
import { describe, expect, it } from 'vitest';
import {
  added,
  alternatives,
  levels,
  linked,
  oneAtATime,
  range,
  type StudyPlan,
  study,
  uniform,
} from '../../../src/study/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { tiltDeck, wrongRows } from '../compared.js';

const made = (vary: StudyPlan['vary'], design: StudyPlan['design'] = { kind: 'grid' }, base: unknown = tiltDeck) =>
  study({ base: base as never, vary, design });
const axlesAsOne = linked({
  'trailer.axles.0.at': range('183 in', '191 in', 5),
  'trailer.axles.1.at': range('217 in', '225 in', 5),
});

describe('linked figures', () => {
  it('move together: both axles as one', () => {
    const s = rightOf(made({ axles: axlesAsOne, 'cargo.0.weight': levels('8,000 lb', '9,000 lb') }));
    expect(s.count).toBe(10);
    expect(s.axes).toEqual([
      { name: 'axles', levels: 5 },
      { name: 'cargo.0.weight', levels: 2 },
    ]);
    const rows = [...s.rows()];
    expect(rows.map(({ inputs }) => Object.values(inputs))).toEqual(
      [183, 185, 187, 189, 191].flatMap((at) => [8000, 9000].map((weight) => [at, at + 34, weight])),
    );
    expect(wrongRows(s).wrong).toEqual([]);
  });

  it('carry a deck length with all that it moves, and exact levels of each', () => {
    const deck = linked({
      'trailer.axles.0.at': levels('175 in', '187 in', '199 in'),
      'trailer.axles.1.at': levels('209 in', '221 in', '233 in'),
      'trailer.curb.weight': levels('3,480 lb', '3,650 lb', '3,840 lb'),
      'trailer.curb.tongue': levels('495 lb', '520 lb', '550 lb'),
    });
    const s = rightOf(made({ deck, 'cargo.0.front': range('100 in', '140 in', 21) }));
    expect(s.count).toBe(63);
    expect(wrongRows(s)).toEqual({ compared: 63, answered: 63, wrong: [] });
  });

  it('are drawn by one chance, and are one bar of a comparison', () => {
    const sure = linked({
      'trailer.axles.0.at': uniform('183 in', '191 in'),
      'trailer.axles.1.at': uniform('217 in', '225 in'),
    });
    const s = rightOf(made({ axles: sure }, { kind: 'latin hypercube', runs: 40, seed: 3 }));
    for (const { inputs } of s.rows())
      expect((inputs['trailer.axles.1.at'] as number) - (inputs['trailer.axles.0.at'] as number)).toBeCloseTo(34, 9);
    const { bars } = rightOf(
      oneAtATime(
        { base: tiltDeck as never, vary: { axles: axlesAsOne, 'cargo.0.front': levels('121 in', '123 in') } },
        'tongue load',
      ),
    );
    expect(bars.map(({ factor }) => factor)).toEqual(['axles', 'cargo.0.front']);
  });

  it('must have as many levels of each, and no path twice', () => {
    const uneven = linked({ 'trailer.axles.0.at': range('1 in', '2 in', 3), 'trailer.axles.1.at': levels('3 in') });
    expect(leftOf(made({ axles: uneven }))).toMatchObject({ path: 'axles', found: '3 levels beside 1' });
    expect(leftOf(made({ axles: axlesAsOne, 'trailer.axles.0.at': levels('180 in') }))).toMatchObject({
      path: 'trailer.axles.0.at',
      found: 'a path varied twice',
    });
    expect(leftOf(made({ nothing: linked({}) }))).toMatchObject({ path: 'nothing' });
    expect(leftOf(made({ axles: linked({ 'trailer.axles.7.at': levels('1 in') }) })).tag).toBe('UnknownPath');
  });
});

describe('added options', () => {
  const items = [
    { name: 'frame', weight: '2,000 lb', at: '150 in' },
    { name: 'axles', weight: '1,200 lb', at: '204 in' },
  ];
  const base = { ...tiltDeck, trailer: { ...tiltDeck.trailer, curb: { items } } };
  const options = added({
    'spare tire': { weight: '62 lb', at: '20 in' },
    winch: { weight: '95 lb', at: '35 in' },
  });
  it('are each on the trailer or not', () => {
    const s = rightOf(made({ options, 'cargo.0.weight': levels('8,000 lb', '9,000 lb') }, { kind: 'grid' }, base));
    expect(s.count).toBe(8);
    const rows = [...s.rows()];
    const empty = rows.map((row) => row.answered && row.figures['empty weight']);
    expect(empty).toEqual([3200, 3200, 3295, 3295, 3262, 3262, 3357, 3357]);
    expect(rows.at(-1)?.choices).toEqual({ 'options: spare tire': 'with', 'options: winch': 'with' });
    expect(wrongRows(s).wrong).toEqual([]);
  });
  it('of no weight are refused by the reader of the spec', () => {
    const light = added({ flag: { weight: 'light', at: '20 in' } });
    expect(leftOf(made({ light }, { kind: 'grid' }, base)).tag).toBe('UndecodableSpec');
  });
});

describe('two sets of alternatives', () => {
  const tires = alternatives({ small: { 'trailer.axles.0.tires': {} } });
  it.each([
    ['the same part', { 'trailer.axles.0.tires': {} }, 'trailer.axles.0.tires, which "tires" replaces too'],
    ['a part of it', { 'trailer.axles.0': {} }, 'trailer.axles.0 beside trailer.axles.0.tires of "tires"'],
  ])('that replace %s are refused', (_, changes, found) => {
    expect(leftOf(made({ tires, build: alternatives({ other: changes }) }))).toMatchObject({
      tag: 'UnusableVariation',
      path: 'build',
      found,
    });
  });
  it('that replace neighbours are not', () => {
    const gvwr = alternatives({ low: { 'trailer.gvwr': '12,000 lb' } });
    const coupler = alternatives({ low: { 'trailer.coupler.gross': '12,000 lb' } });
    expect(rightOf(made({ gvwr, coupler })).count).toBe(1);
  });
});
