/** Designations as typed, the printed figures behind them, and what an unlisted size answers. */
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { allSections, publishedSection, statedMember, weightPerFoot } from '../../../src/members/index.js';
import { explain, weakestInputs } from '../../../src/trace/index.js';
import { lbPerFt, quantity, show } from '../../../src/units/index.js';
import { expectReplays } from '../../helpers/working.js';

const found = (text: string): string => {
  const read = publishedSection(text);
  return isLeft(read) ? describeError(read.left) : `${read.right.designation} ${show(weightPerFoot(read.right).value)}`;
};

describe('section', () => {
  it.each([
    ['C5x6.7', 'C5X6.7 6.7 lb/ft'],
    ['c 5 X 6.7', 'C5X6.7 6.7 lb/ft'],
    ['C5\u00d76.70', 'C5X6.7 6.7 lb/ft'],
    ['mc 6 x 12', 'MC6X12 12 lb/ft'],
    ['W8X10', 'W8X10 10 lb/ft'],
    ['W 12 x 30', 'W12X30 30 lb/ft'],
    ['M12.5x12.4', 'M12.5X12.4 12.4 lb/ft'],
    ['c5x9', 'C5X9 9 lb/ft'],
    ['s3x5.7', 'S3X5.7 5.7 lb/ft'],
    ['HSS 3x2x3/16', 'HSS3X2X3/16 5.59 lb/ft'],
    ['hss 3 x 2 x .1875', 'HSS3X2X3/16 5.59 lb/ft'],
    ['HSS 1 1/2 x 1 1/2 x 3/16', 'HSS1-1/2X1-1/2X3/16 3.04 lb/ft'],
    ['HSS2.375X0.154', 'HSS2.375X0.154 3.66 lb/ft'],
    ['HSS 2.5 x 3/16', 'HSS2.500X0.188 4.65 lb/ft'],
    ['L2x2x1/4', 'L2X2X1/4 3.19 lb/ft'],
    ['L 2-1/2 x 2 x 1/4', 'L2-1/2X2X1/4 3.62 lb/ft'],
    ['L 2.5 x 2 x .25', 'L2-1/2X2X1/4 3.62 lb/ft'],
    ['L2 1/2" x 2" x 1/4"', 'L2-1/2X2X1/4 3.62 lb/ft'],
    ['Pipe 2 STD', 'Pipe2STD 3.66 lb/ft'],
    ['2" sch 40 pipe', 'Pipe2STD 3.66 lb/ft'],
    ['1-1/2 in sch. 80 pipe', 'Pipe1-1/2XS 3.63 lb/ft'],
    ['NPS 4 schedule 40 pipe', 'Pipe4STD 10.8 lb/ft'],
  ])('reads %s', (typed, printed) => expect(found(typed)).toBe(printed));

  it.each([
    '',
    'C',
    'C5',
    'C5x',
    'C5x6.7x2',
    'channel',
    'L2x2',
    'HSS3',
    'W8x1/3',
    'C5x6.7lb',
    'Pipe 2',
    'pipe 2 sch 160',
    'C-5x6.7',
    `C${'5'.repeat(80)}x1`,
    'C5x6..7',
  ])('refuses %j', (typed) => {
    const read = publishedSection(typed);
    expect(isLeft(read) && read.left.tag).toBe('UnreadableDesignation');
  });

  it.each([
    ['C5x8', 'C5X9'],
    ['HSS 2x3x3/16', 'HSS2X2X3/16'],
    ['W8x11', 'W8X10'],
    ['L2x2x7/16', 'L2X2X5/16'],
    ['Pipe 8 STD', 'Pipe6STD'],
    ['HSS 3x2x5/16', 'HSS3X2X1/4'],
    ['Pipe 8 XS', 'Pipe6STD'],
  ])('names the nearest of the unlisted %s', (typed, nearest) => {
    const read = publishedSection(typed);
    expect(isLeft(read) && read.left.tag === 'NotTabulated' && read.left.nearest[0]).toBe(nearest);
    expect(isLeft(read) && read.left.tag === 'NotTabulated' && read.left.nearest).toHaveLength(3);
  });

  it('counts another size as farther than another class of one size, and both in the order of the sizes', () => {
    const read = publishedSection('Pipe 6 XS');
    expect(isLeft(read) && read.left.tag === 'NotTabulated' && read.left.nearest).toEqual([
      'Pipe6STD',
      'Pipe5STD',
      'Pipe4XS',
    ]);
  });

  it('finds every printed row by its own designation, with its own figures', () => {
    const all = allSections();
    expect(all).toHaveLength(33 + 32 + 19 + 44 + 84);
    for (const one of all) {
      const again = publishedSection(one.designation);
      expect(isRight(again) && again.right.row).toBe(one.row);
      expectReplays(one.weightPerFoot, one.area, one.Ix, one.Sx, one.rx, one.Iy, one.Sy, one.ry);
    }
  });

  it('computes the radii of gyration where a copy does not print them', () => {
    const read = publishedSection('W12x30');
    if (isLeft(read)) throw new Error('W12x30 is printed');
    expect(explain(read.right.rx)).toMatchInlineSnapshot(`
      "W12X30 Ix = 238 in4  [rolled beams, further rows, W12X30: AISC shapes tables, as
          carried by an open-source structural library, undated]
      W12X30 area = 8.79 in2  [rolled beams, further rows, W12X30: AISC shapes tables,
          as carried by an open-source structural library, undated]
      W12X30 rx
        = square root of (W12X30 Ix / W12X30 area)
        = square root of (238 in4 / 8.79 in2)
        = 5.2 in"
    `);
  });

  it('rests on the published table', () => {
    const read = publishedSection('C5x6.7');
    if (isLeft(read)) throw new Error('C5x6.7 is printed');
    expect(weakestInputs(read.right.weightPerFoot).basis).toBe('published');
  });
});

describe('a member of its own weight', () => {
  it('is taken in any unit', () => {
    const rail = statedMember('side rail', quantity('3.5', 'kg/m'));
    if (isLeft(rail)) throw new Error('a weight above zero');
    expect(show(weightPerFoot(rail.right).value).slice(0, 7)).toBe('2.35189');
    expectReplays(rail.right.weightPerFoot);
  });
  it('weighs more than nothing', () => {
    const none = statedMember('side rail', lbPerFt(0));
    expect(isLeft(none) && none.left).toMatchObject({
      chapter: 'trace',
      tag: 'OutsideItsRange',
      what: 'side rail weight per foot',
    });
  });
});
