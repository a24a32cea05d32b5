/** A rail, a crossmember and a board of the example against beams by hand. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import { type FrameQuestion, frameChecks } from '../../../src/choose/index.js';
import { publishedSection, statedAllowable } from '../../../src/members/index.js';
import { asDerived } from '../../../src/trace/index.js';
import { inch, inch3, inch4, ksi, lb } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

const allowable = rightOf(statedAllowable(ksi(20), 'invented for the test'));
const wood = rightOf(statedAllowable(ksi('1.2'), 'invented for the test'));
const question: FrameQuestion = {
  spec: tiltDeck(),
  rail: { section: 'C8X11.5', count: 2, end: inch(302) },
  crossmember: { section: 'C3X4.1', span: inch(40) },
  board: {
    I: asDerived('I', inch4('2.04')),
    S: asDerived('S', inch3('2.72')),
    E: ksi(1400),
    allowable: wood,
    span: inch(14),
  },
  wheel: lb(2000),
  allowable,
};

describe('frameChecks', () => {
  const { rail, crossmember, board, caution } = rightOf(frameChecks(question));
  it('puts on two rails what stands on the trailer: their fronts bear the moment about the axles', () => {
    // By hand: 3,650 lb spread over 302 in, 9,000 lb over 168 in from 122 in, axles at 204 in.
    const tongue = (3650 * (204 - 151)) / 204 + (9000 * (204 - 206)) / 204;
    expect(2 * plain(rail.reactions.left)).toBeCloseTo(tongue, 8);
    expect(2 * plain(rail.reactions.right)).toBeCloseTo(12650 - tongue, 8);
    expect(plain(rail.bending.stress)).toBeCloseTo(
      plain(rail.greatestMoment.moment) / plain(rightOf(publishedSection('C8X11.5')).Sx),
      8,
    );
    expectReplays(rail.bending.stress);
  });
  it('bends a crossmember and a board by P L / 4, P L^3 / (48 E I) (AISC Table 3-23, case 7, from memory)', () => {
    const c3 = rightOf(publishedSection('C3X4.1'));
    expect(plain(crossmember!.greatestMoment.moment)).toBeCloseTo((2000 * 40) / 4, 8);
    expect(plain(crossmember!.bending.stress)).toBeCloseTo(20000 / plain(c3.Sx), 6);
    const middle = board!.stations.find(({ at }) => plain(at) === 7)!;
    expect(plain(middle.deflection)).toBeCloseTo((2000 * 14 ** 3) / (48 * 1400e3 * 2.04), 10);
  });
  it('says what it is not', () => expect(caution).toMatch(/One member, static/));
  it('answers what is told: no wheel, no crossmember', () => {
    const { wheel: _wheel, ...rest } = question;
    expect(Object.keys(rightOf(frameChecks(rest)))).toEqual(['rail', 'caution']);
  });
  it('refuses rails that do not reach the axles, a section nobody prints, cargo without a place', () => {
    expect(leftOf(frameChecks({ ...question, rail: { ...question.rail, end: inch(150) } })).tag).toBeDefined();
    expect(leftOf(frameChecks({ ...question, rail: { ...question.rail, section: 'C9X99' } })).tag).toBeDefined();
    const piece = { name: 'machine', weight: '500 lb' };
    const unplaced = changed(tiltDeck(), 'cargo.0', piece);
    expect(rightOf(assess(unplaced)).verdict).toBeDefined();
    expect(leftOf(frameChecks({ ...question, spec: unplaced }))).toMatchObject({
      tag: 'NothingToAnswer',
      path: 'cargo',
    });
  });
});
