/** Sections by hand and in print: composite, bent, pipe. The source stands beside each check. */
import { describe, expect, it } from 'vitest';
import { type Outline, publishedSection, sectionProperties, steelDensity } from '../../src/members/index.js';
import { inch } from '../../src/units/index.js';
import { plain, rightOf } from '../helpers/either.js';

const formed = (depth: string, width: string, thickness: string, radius: string): Outline => ({
  kind: 'formed channel',
  depth: inch(depth),
  flangeWidth: inch(width),
  thickness: inch(thickness),
  insideRadius: inch(radius),
});
const of = (outline: Outline) => rightOf(sectionProperties(outline, steelDensity));

describe('composite section', () => {
  it('I of two flanges 4 x 1/2 and a web 1/2 x 4: Ix 23.0 in4 (engineering course page)', () => {
    const beam = of({
      kind: 'parallel beam',
      depth: inch(5),
      flangeWidth: inch(4),
      web: inch('0.5'),
      flange: inch('0.5'),
      rootRadius: inch(0),
    });
    expect(plain(beam.Ix)).toBeCloseTo(23.0, 10);
  });
});

describe('formed channels', () => {
  it('two channels 6 x 1.5 x 0.135, inside radius 3/16, back to back: ry 0.5182 (closed form; 0.515 by the linear method in Lin, Yu, Galambos 1991, ex. 17.1, secondary quote)', () => {
    const one = of(formed('6', '1.5', '0.135', '0.1875'));
    const pair = Math.sqrt((plain(one.Iy) + plain(one.area) * plain(one.fromBack) ** 2) / plain(one.area));
    expect(pair).toBeCloseTo(0.5182, 4);
    expect(Math.abs(pair / 0.515 - 1)).toBeLessThan(0.007);
  });
  it('6 x 2 x 3/16, inside radius 3/16: closed form, derived', () => {
    const one = of(formed('6', '2', '0.1875', '0.1875'));
    expect(plain(one.area)).toBeCloseTo(1.7594, 4);
    expect(plain(one.weightPerFoot)).toBeCloseTo(5.987, 3);
    expect(plain(one.Ix)).toBeCloseTo(8.7201, 4);
    expect(plain(one.Sx)).toBeCloseTo(2.9067, 4);
    expect(plain(one.fromBack)).toBeCloseTo(0.4816, 4);
    expect(plain(one.Iy)).toBeCloseTo(0.6044, 4);
  });
  it('5 x 2 x 3/16: 5.349 lb/ft, Sx 2.246, derived', () => {
    const one = of(formed('5', '2', '0.1875', '0.1875'));
    expect(plain(one.weightPerFoot)).toBeCloseTo(5.349, 3);
    expect(plain(one.Sx)).toBeCloseTo(2.246, 3);
  });
  it('the centre-line method gives the same area and an Ix 0.05 to 0.2 per cent lower (line-element formulas, derived)', () => {
    const [t, d, b, ri] = [0.1875, 6, 2, 0.1875];
    const [rc, h, f] = [ri + t / 2, d - 2 * (ri + t), b - ri - t];
    const [u, c] = [(Math.PI / 2) * rc, (2 * rc) / Math.PI];
    const Ix = t * (h ** 3 / 12 + 2 * f * ((d - t) / 2) ** 2 + 2 * (0.149 * rc ** 3 + u * (h / 2 + c) ** 2));
    const one = of(formed('6', '2', '0.1875', '0.1875'));
    expect(t * (h + 2 * f + 2 * u)).toBeCloseTo(plain(one.area), 10);
    expect(plain(one.Ix) / Ix - 1).toBeGreaterThan(0.0004);
    expect(plain(one.Ix) / Ix - 1).toBeLessThan(0.002);
  });
});

describe('pipe', () => {
  it('NPS 4 schedule 40 is 4.500 x 0.237 (ASME B36.10 chart copy) and weighs 10.8 lb/ft (AISC v16.0)', () => {
    const printed = rightOf(publishedSection('4 in sch 40 pipe'));
    expect(printed.row).toMatchObject({ outside: '4.5', wall: '0.237' });
    const ring = of({ kind: 'round tube', outside: inch('4.5'), wall: inch('0.237'), properties: 'nominal wall' });
    expect(plain(ring.weightPerFoot)).toBeCloseTo(10.8, 2);
    expect(plain(ring.weightPerFoot)).toBeCloseTo(10.69 * (4.5 - 0.237) * 0.237, 2);
    expect(plain(printed.weightPerFoot)).toBe(10.8);
  });
});

describe('weld metal', () => {
  it('a 1/4 in fillet weighs 0.16 lb/ft at 490 lb/ft3, 1.5 times its triangle (Iowa DOT IM 569)', () => {
    const square = of({ kind: 'flat', height: inch('0.25'), width: inch('0.25') });
    expect((plain(square.weightPerFoot) / 2) * 1.5).toBeCloseTo(0.16, 3);
  });
});
