/** Weight per foot of deck. All trailers are invented. */
import { describe, expect, it } from 'vitest';
import { board, publishedSection, weightPerFootOfDeck } from '../../../src/members/index.js';
import { inch, lbPerFt3, ratio } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const c6 = rightOf(publishedSection('C6x8.2'));
const c3 = rightOf(publishedSection('C3x4.1'));
const w10 = rightOf(publishedSection('W10x19'));
const c4 = rightOf(publishedSection('C4x5.4'));

describe('growth per foot of deck', () => {
  const pine = rightOf(board('2x8', { by: 'density', density: lbPerFt3(38) })).weightPerSquareFoot;
  const low = (spacing: number) =>
    rightOf(
      weightPerFootOfDeck({
        rails: [{ name: 'rails', member: c6, count: ratio(2) }],
        crossmembers: [{ name: 'crossmembers', member: c3, length: inch(83), spacing: inch(spacing) }],
        surfaces: [{ name: 'deck', width: inch(83), weight: pine }],
      }),
    );
  it('low deck of 83 in: 70.5 lb/ft at 16 in, 63.4 at 24 in (derived)', () => {
    expect(low(16).lines.map(({ perFoot }) => plain(perFoot).toFixed(1))).toEqual(['16.4', '21.3', '32.9']);
    expect(plain(low(16).perFoot)).toBeCloseTo(70.5, 1);
    expect(plain(low(24).perFoot)).toBeCloseTo(63.4, 1);
    expectReplays(low(16).perFoot);
  });
  it('deckover of 102 in: 115.3 lb/ft (derived)', () => {
    const over = rightOf(
      weightPerFootOfDeck({
        rails: [
          { name: 'main beams', member: w10, count: ratio(2) },
          { name: 'side rails', member: c4, count: ratio(2) },
        ],
        crossmembers: [{ name: 'crossmembers', member: c3, length: inch(102), spacing: inch(16) }],
        surfaces: [{ name: 'deck', width: inch(102), weight: pine }],
      }),
    );
    expect(plain(over.perFoot)).toBeCloseTo(115.3, 1);
  });
  it('refuses spacings and counts of nothing, and nothing at all', () => {
    expect(
      leftOf(
        weightPerFootOfDeck({
          rails: [],
          surfaces: [],
          crossmembers: [{ name: 'crossmembers', member: c3, length: inch(83), spacing: inch(-16) }],
        }),
      ),
    ).toMatchObject({ tag: 'OutsideItsRange', what: 'crossmembers spacing' });
    expect(
      leftOf(
        weightPerFootOfDeck({
          rails: [{ name: 'rails', member: c6, count: ratio(0) }],
          surfaces: [],
          crossmembers: [],
        }),
      ),
    ).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(weightPerFootOfDeck({ rails: [], surfaces: [], crossmembers: [] }))).toMatchObject({
      tag: 'NothingListed',
    });
  });
});
