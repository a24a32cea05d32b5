/** Questions that cannot be answered: named at their key, and the rest answered. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { auditSheet, leverWords, remedies, sureness, wordsForChoose } from '../../src/choose/index.js';
import { lb } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { fitStock } from '../helpers/untyped.js';

const { tow, cargo } = tiltDeck() as unknown as { tow: unknown; cargo: readonly unknown[] };

describe('stock', () => {
  it('names trailers that cannot be read, and answers the others', () => {
    const stock = {
      good: tiltDeck(),
      nothing: null,
      word: 'a big one',
      list: [],
      half: { trailer: { hitch: 'ball', axles: [{ gawr: 'much' }] } },
      wrong: changed(tiltDeck(), 'trailer.gvwr', '14,000'),
    };
    const { fits, others, failed } = rightOf(fitStock({ stock, tow, cargo }));
    expect([...fits, ...others].map(({ name }) => name)).toEqual(['good']);
    expect(failed.map(({ name }) => name)).toEqual(['nothing', 'word', 'list', 'half', 'wrong']);
    for (const { error } of failed) expect(error.tag).toBe('UndecodableSpec');
  });
  it('puts down cargo that cannot be read to every trailer', () => {
    const { fits, others, failed } = rightOf(fitStock({ stock: { good: tiltDeck() }, tow, cargo: ['a roller'] }));
    expect([fits, others, failed.length]).toEqual([[], [], 1]);
  });
  it('has nothing left where more is wanted than there is', () => {
    const want = { payload: lb(1e9), reserve: lb(0) };
    const { fits } = rightOf(fitStock({ stock: { good: tiltDeck() }, tow, cargo, want }));
    expect(fits).toEqual([]);
  });
});

describe('tolerances', () => {
  const assessment = rightOf(assess(tiltDeck()));
  it.each(['-3 %', '-10 lb', 'a little', '100 %'])('%s by basis is refused at its row', (amount) => {
    const byBasis = [{ basis: 'stated', dimension: 'mass', amount, source: 'a test' }] as const;
    expect(leftOf(sureness(assessment, { byBasis }))).toMatchObject({ tag: 'UnusableFigure', found: amount });
  });
});

describe('levers', () => {
  it('refuses one that does not exist, with those that do', () => {
    const error = leftOf(remedies(tiltDeck(), ['move', 'pray' as never]));
    expect(error).toMatchObject({ tag: 'UnusableFigure', path: 'levers.1', found: 'pray' });
    expect(wordsForChoose(error as never)).toBe(`found pray; give a lever: ${leverWords.join(', ')}`);
  });
  it('pulls only those that are asked for', () => {
    const spec = changed(changed(tiltDeck(), 'trailer.rearLegs', '8,000 lb'), 'tow.ballMount.tongue', '1,400 lb');
    const word = (levers: readonly (typeof leverWords)[number][]) =>
      rightOf(remedies(spec, levers)).single.map(({ steps }) => steps[0]?.says.split(' ').slice(0, 1).join(' '));
    expect(word(['move'])).toEqual(['move']);
    expect(word(['ball mount'])).toEqual(['fit']);
    expect(word([])).toEqual([]);
  });
});

describe('sheets', () => {
  it('with two figures that nothing ties together say which third would', () => {
    const error = leftOf(auditSheet({ gvwr: '14,000 lb', deckLength: '20 ft' }));
    expect(error).toMatchObject({ tag: 'NothingToAnswer' });
    expect(wordsForChoose(error)).toMatch(/third figure/);
  });
  it('with two figures that contradict each other are answered', () =>
    expect(rightOf(auditSheet({ gvwr: '3,000 lb', emptyWeight: '3,650 lb' })).conflicts).toHaveLength(1));
});
