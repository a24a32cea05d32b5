/** Weights of deck areas. All trailers are invented. */
import { describe, expect, it } from 'vitest';
import { board, deckWeight } from '../../../src/members/index.js';
import { foot, inch, lbPerFt2, lbPerFt3, mm, show } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('deck weight', () => {
  it('weighs areas at their places in any unit', () => {
    const pine = rightOf(board('2x8', { by: 'density', density: lbPerFt3(38) }));
    const deck = rightOf(
      deckWeight([
        { name: 'deck', length: foot(18), width: inch(83), from: inch(60), surface: pine.weightPerSquareFoot },
        { name: 'beavertail', length: mm(609.6), width: inch(83), from: inch(276), surface: lbPerFt2(6) },
      ]),
    );
    expect(plain(deck.lines[0]!.weight)).toBeCloseTo(591.375, 9);
    expect(deck.lines.map(({ at }) => show(at.value))).toEqual(['168 in', '288 in']);
    expect(plain(deck.total)).toBeCloseTo(591.375 + 83, 9);
    expectReplays(deck.total, deck.lines[1]!.at);
  });
  it('refuses no width, no weight, no area', () => {
    const area = { name: 'deck', length: foot(18), width: inch(83), from: inch(60), surface: lbPerFt2(5) };
    expect(leftOf(deckWeight([area, { ...area, width: inch(0) }]))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'deck width',
      path: '1',
    });
    expect(leftOf(deckWeight([{ ...area, surface: lbPerFt2(-5) }]))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(deckWeight([]))).toMatchObject({ tag: 'NothingListed', what: 'deck parts' });
  });
});
