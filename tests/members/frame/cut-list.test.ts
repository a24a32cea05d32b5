/** An invented trailer built up from its cut list: frame and deck lines are items of a curb weight. */
import { describe, expect, it } from 'vitest';
import { curbWeight } from '../../../src/load/index.js';
import {
  board,
  deckWeight,
  frameWeight,
  payloadByLength,
  publishedSection,
  weightPerFootOfDeck,
} from '../../../src/members/index.js';
import { decodeCutList, decodeDeck } from '../../../src/spec/index.js';
import { foot, inch, lb, lbPerFt3, ratio } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const build = (deckLength: number) => {
  const frame = rightOf(
    frameWeight(
      rightOf(
        decodeCutList(
          [
            { name: 'rails', member: 'C6x8.2', length: `${deckLength} ft`, count: 2, from: '60 in' },
            {
              name: 'crossmembers',
              member: 'C3x4.1',
              length: '83 in',
              spacing: '16 in',
              over: `${deckLength} ft`,
              from: '60 in',
              rule: 'first at the start',
            },
            { name: 'tongue', member: 'C6x8.2', length: '72 in', count: 2, at: '40 in' },
          ],
          'trailer.curb.frame',
        ),
      ),
    ),
  );
  const deck = rightOf(
    deckWeight(
      rightOf(
        decodeDeck(
          [
            {
              name: 'deck',
              length: `${deckLength} ft`,
              width: '83 in',
              from: '60 in',
              surface: { boards: { size: '2x8', wood: { by: 'density', density: '38 lb/ft3' } } },
            },
          ],
          'trailer.curb.deck',
        ),
      ),
    ),
  );
  const running = { name: 'axles, wheels and brakes', weight: lb(1300), at: inch(190) };
  return { frame, deck, curb: rightOf(curbWeight([...frame.lines, ...deck.lines, running])) };
};

describe('curb weight from a cut list', () => {
  it('is the sum of the frame, the deck and the rest, and balances', () => {
    const { frame, deck, curb } = build(18);
    expect(plain(curb.weight)).toBeCloseTo(plain(frame.total) + plain(deck.total) + 1300, 9);
    expect(plain(curb.at)).toBeGreaterThan(150);
    expect(plain(curb.at)).toBeLessThan(190);
    expectReplays(curb.weight, curb.at);
  });
  it('grows by the weight per foot of deck, within one crossmember', () => {
    const growth = rightOf(
      weightPerFootOfDeck({
        rails: [{ name: 'rails', member: rightOf(publishedSection('C6x8.2')), count: ratio(2) }],
        crossmembers: [
          { name: 'crossmembers', member: rightOf(publishedSection('C3x4.1')), length: inch(83), spacing: inch(16) },
        ],
        surfaces: [
          {
            name: 'deck',
            width: inch(83),
            weight: rightOf(board('2x8', { by: 'density', density: lbPerFt3(38) })).weightPerSquareFoot,
          },
        ],
      }),
    );
    for (const longer of [20, 22, 24]) {
      const real = plain(build(longer).curb.weight) - plain(build(18).curb.weight);
      expect(Math.abs(real - plain(growth.perFoot) * (longer - 18))).toBeLessThan((4.1 * 83) / 12 + 1e-9);
    }
    const rows = rightOf(
      payloadByLength({
        gvwr: lb(14000),
        baseWeight: build(18).curb.weight,
        baseLength: foot(18),
        perFoot: growth.perFoot,
        lengths: [foot(18), foot(20)],
      }),
    ).rows;
    expect(plain(rows[0]!.payload) - plain(rows[1]!.payload)).toBeCloseTo(2 * plain(growth.perFoot), 9);
    expectReplays(rows[1]!.payload);
  });
});
