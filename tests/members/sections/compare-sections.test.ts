/** Rolled against formed: the teaching table (inside radius = thickness, same outside size), derived. */
import { describe, expect, it } from 'vitest';
import {
  compareSections,
  publishedSection,
  sectionDimension,
  sectionProperties,
  steelDensity,
} from '../../../src/members/index.js';
import { inch } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

function against(rolled: string, thickness: string) {
  const first = rightOf(publishedSection(rolled));
  if (!('fromBack' in first.row)) throw new Error('a channel');
  const second = rightOf(
    sectionProperties(
      {
        kind: 'formed channel',
        name: 'formed channel',
        depth: sectionDimension(first, 'depth', first.row.depth),
        flangeWidth: sectionDimension(first, 'flange width', first.row.flangeWidth),
        thickness: inch(thickness),
        insideRadius: inch(thickness),
      },
      steelDensity,
    ),
  );
  return compareSections(first, second);
}

describe('rolled against formed', () => {
  it.each([
    ['C4X5.4', '0.1875', 4.175, 1.362, 0.773, 0.709],
    ['C5X6.7', '0.1875', 5.03, 2.029, 0.751, 0.679],
    ['C6X8.2', '0.1875', 5.885, 2.822, 0.718, 0.649],
    ['C6X8.2', '0.25', 7.672, 3.568, 0.936, 0.82],
    ['C8X11.5', '0.25', 9.952, 6.126, 0.865, 0.753],
  ])('%s against %s in plate', (rolled, thickness, weight, Sx, weightRatio, SxRatio) => {
    const compared = against(rolled, thickness);
    expect(plain(compared.second.weightPerFoot)).toBeCloseTo(weight, 2);
    expect(plain(compared.second.Sx)).toBeCloseTo(Sx, 3);
    expect(plain(compared.weightRatio)).toBeCloseTo(weightRatio, 3);
    expect(plain(compared.SxRatio)).toBeCloseTo(SxRatio, 3);
    expect(plain(compared.SxPerPoundRatio)).toBeCloseTo(SxRatio / weightRatio, 2);
    expectReplays(compared.SxPerPoundRatio, compared.weightRatio, compared.SxRatio);
  });
  it('says it in a sentence', () => {
    expect(against('C6X8.2', '0.1875').says).toBe(
      'formed channel weighs 72 % of C6X8.2 per foot and has 65 % of its section modulus: in the same steel it reaches the same bending stress at 65 % of the bending moment, and each pound does less than in C6X8.2.',
    );
  });
  it('finds a section equal to itself, and a deeper one better by the pound', () => {
    const [c6, c8] = [rightOf(publishedSection('C6X8.2')), rightOf(publishedSection('C8X11.5'))];
    expect(compareSections(c6, c6).says).toContain('each pound does as much as in C6X8.2');
    expect(compareSections(c6, c8).says).toContain('each pound does more than in C6X8.2');
  });
});
