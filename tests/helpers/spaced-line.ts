/** Crossmembers at a spacing, for the tests of cut lists. Invented. */
import { publishedSection, type SpacedLine } from '../../src/members/index.js';
import { foot, inch } from '../../src/units/index.js';
import { rightOf } from './either.js';

export const cross: SpacedLine = {
  name: 'crossmembers',
  member: rightOf(publishedSection('C3x4.1')),
  length: inch(83),
  spacing: inch(16),
  over: foot(18),
  from: inch(60),
  rule: 'first at the start',
};
