/** Outlines that nobody can make are refused by every kind of section, not lost in the rounding. */
import { describe, expect, it } from 'vitest';
import { type Outline, sectionProperties, steelDensity } from '../../../src/members/index.js';
import { inch } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';

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
  { kind: 'flat', height: inch(1), width: endless },
  { kind: 'formed channel', depth: endless, flangeWidth: inch(2), thickness: inch(1), insideRadius: inch(0) },
  { kind: 'angle', uprightLeg: inch(2), flatLeg: inch(2), thickness: nothing },
  ...(['height', 'width'] as const).map(
    (side): Outline => ({
      kind: 'rectangular tube',
      height: inch(4),
      width: inch(4),
      [side]: endless,
      wall: inch('0.25'),
      properties: 'nominal wall',
      outsideRadius: 'twice the wall',
    }),
  ),
];

describe('a section of next to nothing, or without end', () => {
  it.each(outlines)('$kind is refused', (outline) => {
    expect(leftOf(sectionProperties(outline, steelDensity))).toMatchObject({
      chapter: 'trace',
      tag: 'OutsideItsRange',
    });
  });
});

describe('a section at the edge of what can be made', () => {
  const area = (outline: Outline): number => plain(rightOf(sectionProperties(outline, steelDensity)).area);
  const refused = (outline: Outline): object => leftOf(sectionProperties(outline, steelDensity));
  it('a size from a ten thousandth of an inch to 100,000 in', () => {
    const flat = (height: string, width: string): Outline => ({
      kind: 'flat',
      height: inch(height),
      width: inch(width),
    });
    expect(area(flat('0.0001', '100000'))).toBeCloseTo(10, 9);
    expect(refused(flat('0.00009', '1'))).toMatchObject({ tag: 'OutsideItsRange', what: 'height' });
    expect(refused(flat('1', '100000.5'))).toMatchObject({ tag: 'OutsideItsRange', what: 'width' });
  });
  it('a bent channel without straight flanges, or without a straight web', () => {
    const channel = (depth: string, flange: string): Outline => ({
      kind: 'formed channel',
      depth: inch(depth),
      flangeWidth: inch(flange),
      thickness: inch('0.25'),
      insideRadius: inch('0.5'),
    });
    // Two quarter rings of 0.5 to 0.75 in are half a ring: pi (0.75^2 - 0.5^2) / 2 = 0.490874 in2; the web 0.25 in times 4.5 in.
    expect(area(channel('6', '0.75'))).toBeCloseTo(0.490874 + 1.125, 6);
    expect(area(channel('1.5', '2'))).toBeCloseTo(0.490874 + 2 * 1.25 * 0.25, 6);
    expect(refused(channel('6', '0.74'))).toMatchObject({ tag: 'ImpossibleShape', what: 'flange width' });
    expect(refused(channel('1.49', '2'))).toMatchObject({ tag: 'ImpossibleShape', what: 'depth' });
  });
  it('a round tube with walls of half its diameter, which is a bar', () => {
    const tube = (wall: string): Outline => ({
      kind: 'round tube',
      outside: inch(3),
      wall: inch(wall),
      properties: 'nominal wall',
    });
    expect(area(tube('1.5'))).toBeCloseTo((Math.PI * 9) / 4, 9);
    expect(area(tube('1.2'))).toBeCloseTo((Math.PI * (9 - 0.36)) / 4, 9);
    expect(refused(tube('1.51'))).toMatchObject({ tag: 'ImpossibleShape', what: 'both walls' });
  });
});
