/** Outlines that cannot be, the wall convention of tube, and figures whatever the unit of the calipers. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aluminiumDensity,
  type Outline,
  sectionProperties,
  standardTaper,
  steelDensity,
} from '../../../src/members/index.js';
import { compare, inch, lbPerFt3, mm, ratio, show } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const channel = {
  kind: 'tapered channel',
  depth: inch(5),
  flangeWidth: inch('1.75'),
  web: inch('0.19'),
  flange: inch('0.32'),
  slope: standardTaper,
  rootRadius: inch('0.29'),
  toeRadius: inch('0.114'),
} as const;
const bent = {
  kind: 'formed channel',
  depth: inch(6),
  flangeWidth: inch(2),
  thickness: inch('0.1875'),
  insideRadius: inch('0.1875'),
} as const;
const tube = {
  kind: 'rectangular tube',
  height: inch(3),
  width: inch(2),
  wall: inch('0.1875'),
  properties: 'nominal wall',
  outsideRadius: 'twice the wall',
} as const;
const pipe = { kind: 'round tube', outside: inch('4.5'), wall: inch('0.237'), properties: 'nominal wall' } as const;
const angle = { kind: 'angle', uprightLeg: inch(2), flatLeg: inch(2), thickness: inch('0.25') } as const;

describe('outlines that cannot be', () => {
  it.each<[string, Outline, string, string]>([
    ['a flange narrower than its web', { ...channel, flangeWidth: inch('0.19') }, 'ImpossibleShape', 'flange width'],
    [
      'flanges as deep as the section',
      { ...channel, flange: inch('2.4') },
      'ImpossibleShape',
      'both flanges at the root',
    ],
    ['a flange too thin for its slope', { ...channel, flange: inch('0.13') }, 'ImpossibleShape', 'flange thickness'],
    ['a root radius larger than the overhang', { ...channel, rootRadius: inch(2) }, 'ImpossibleShape', 'root radius'],
    ['a toe radius larger than the tip', { ...channel, toeRadius: inch('0.3') }, 'ImpossibleShape', 'toe radius'],
    ['a negative slope', { ...channel, slope: ratio(-1) }, 'OutsideItsRange', 'flange slope'],
    ['a slope past 45 degrees', { ...channel, slope: ratio('1e30') }, 'OutsideItsRange', 'flange slope'],
    ['a negative web', { ...channel, web: inch('-0.19') }, 'OutsideItsRange', 'web thickness'],
    ['a depth of zero', { ...channel, depth: inch(0) }, 'OutsideItsRange', 'depth'],
    ['a bend radius larger than the leg', { ...bent, insideRadius: inch(2) }, 'ImpossibleShape', 'flange width'],
    ['bends deeper than the section', { ...bent, depth: inch('0.7') }, 'ImpossibleShape', 'depth'],
    ['a negative bend radius', { ...bent, insideRadius: inch('-0.1') }, 'OutsideItsRange', 'inside bend radius'],
    ['a wall of half the width', { ...tube, wall: inch(1), outsideRadius: inch(1) }, 'ImpossibleShape', 'both walls'],
    ['corners wider than the tube', { ...tube, outsideRadius: inch('1.1') }, 'ImpossibleShape', 'outside corners'],
    [
      'an outside radius below the wall',
      { ...tube, outsideRadius: inch('0.1') },
      'ImpossibleShape',
      'outside corner radius',
    ],
    ['a design wall of zero', { ...tube, properties: { designWall: inch(0) } }, 'OutsideItsRange', 'design wall'],
    ['a pipe of more wall than pipe', { ...pipe, wall: inch('2.3') }, 'ImpossibleShape', 'both walls'],
    ['an angle thicker than its leg', { ...angle, thickness: inch(2) }, 'ImpossibleShape', 'upright leg'],
    ['a flat of no width', { kind: 'flat', height: inch(3), width: inch(0) }, 'OutsideItsRange', 'width'],
  ])('refuses %s', (_, outline, tag, what) => {
    expect(leftOf(sectionProperties(outline, steelDensity))).toMatchObject({ tag, what });
  });
  it('refuses a density of zero', () => {
    expect(leftOf(sectionProperties(angle, lbPerFt3(0)))).toMatchObject({ tag: 'OutsideItsRange', what: 'density' });
  });
});

describe('walls', () => {
  it('weighs the nominal wall whatever the wall of the properties', () => {
    const [full, design] = [
      rightOf(sectionProperties(tube, steelDensity)),
      rightOf(sectionProperties({ ...tube, properties: '0.93 of nominal wall' }, steelDensity)),
    ];
    expect(compare(full.weightPerFoot.value, design.weightPerFoot.value)).toBe(0);
    expect(plain(design.area) / plain(full.area)).toBeLessThan(0.945);
    expectReplays(design.weightPerFoot, design.area, design.Sx);
  });
});

describe('units and densities', () => {
  it('reads calipers in millimetres and weighs aluminium', () => {
    const inches = rightOf(sectionProperties({ kind: 'flat', height: inch(4), width: inch('0.5') }, steelDensity));
    const metric = rightOf(
      sectionProperties({ kind: 'flat', height: mm('101.6'), width: mm('12.7') }, aluminiumDensity),
    );
    expect(show(inches.area.value)).toBe('2 in2');
    expect(show(metric.area.value)).toBe('2 in2');
    expect(show(metric.weightPerFoot.value)).toBe('2.352 lb/ft');
    expectReplays(metric.weightPerFoot, metric.Ix, metric.Sy);
  });
});

describe('laws of outlines', () => {
  const dimensions = fc.record({
    depth: fc.integer({ min: 300, max: 1200 }),
    flange: fc.integer({ min: 100, max: 400 }),
    thickness: fc.integer({ min: 10, max: 40 }),
    radius: fc.integer({ min: 0, max: 50 }),
  });
  it('a formed channel weighs its flat blank: area is thickness x mean line', () => {
    fc.assert(
      fc.property(dimensions, ({ depth, flange, thickness, radius }) => {
        const of = rightOf(
          sectionProperties(
            {
              kind: 'formed channel',
              depth: inch(depth / 100),
              flangeWidth: inch(flange / 100),
              thickness: inch(thickness / 100),
              insideRadius: inch(radius / 100),
            },
            steelDensity,
          ),
        );
        const outer = (radius + thickness) / 100;
        const blank = depth / 100 - 2 * outer + 2 * (flange / 100 - outer) + Math.PI * (radius / 100 + thickness / 200);
        expect(plain(of.area)).toBeCloseTo((blank * thickness) / 100, 10);
      }),
      { numRuns: 50 },
    );
  });
  it('scales: a section twice as large has 4 times the area, 8 times S, 16 times I', () => {
    const twice = rightOf(
      sectionProperties(
        {
          ...channel,
          depth: inch(10),
          flangeWidth: inch('3.5'),
          web: inch('0.38'),
          flange: inch('0.64'),
          rootRadius: inch('0.58'),
          toeRadius: inch('0.228'),
        },
        steelDensity,
      ),
    );
    const once = rightOf(sectionProperties(channel, steelDensity));
    expect(plain(twice.area) / plain(once.area)).toBeCloseTo(4, 12);
    expect(plain(twice.Sx) / plain(once.Sx)).toBeCloseTo(8, 12);
    expect(plain(twice.Iy) / plain(once.Iy)).toBeCloseTo(16, 12);
  });
  it('a tapered flange without slope and toe is a parallel one', () => {
    const { toeRadius: _, slope: __, ...rest } = channel;
    const parallel = rightOf(sectionProperties({ ...rest, kind: 'parallel channel' }, steelDensity));
    const tapered = rightOf(sectionProperties({ ...channel, slope: ratio(0), toeRadius: inch(0) }, steelDensity));
    for (const name of ['area', 'fromBack'] as const)
      expect(plain(tapered[name])).toBeCloseTo(plain(parallel[name]), 12);
    // the own second moment of the fillets is left out of the sloped corner
    expect(plain(parallel.Iy) / plain(tapered.Iy) - 1).toBeGreaterThan(0);
    expect(plain(parallel.Iy) / plain(tapered.Iy) - 1).toBeLessThan(0.0003);
    expect(Math.abs(plain(tapered.Ix) / plain(parallel.Ix) - 1)).toBeLessThan(0.0001);
    expectReplays(parallel.Ix, parallel.Iy, parallel.Sy);
  });
});
