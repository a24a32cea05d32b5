/** Outlines that nobody can make are refused by every kind of section, not lost in the rounding. */
import { describe, expect, it } from 'vitest';
import { type Outline, sectionProperties, steelDensity } from '../../../src/members/index.js';
import { inch } from '../../../src/units/index.js';
import { leftOf } from '../../helpers/either.js';

const [nothing, endless] = [inch('1e-40'), inch('1e40')];
const outlines: readonly Outline[] = [
  { kind: 'formed channel', depth: inch(6), flangeWidth: inch(2), thickness: nothing, insideRadius: inch('0.1875') },
  {
    kind: 'rectangular tube',
    height: inch(4),
    width: inch(2),
    wall: nothing,
    properties: 'nominal wall',
    outsideRadius: 'twice the wall',
  },
  { kind: 'round tube', outside: endless, wall: inch('0.25'), properties: 'nominal wall' },
  { kind: 'round tube', outside: inch(3), wall: nothing, properties: 'nominal wall' },
  { kind: 'flat', height: nothing, width: inch(1) },
];

describe('a section of next to nothing, or without end', () => {
  it.each(outlines)('$kind is refused', (outline) => {
    expect(leftOf(sectionProperties(outline, steelDensity))).toMatchObject({
      chapter: 'trace',
      tag: 'OutsideItsRange',
    });
  });
});
