/** Plate, sheet, floor plate, mesh, boards, bars: every printed row again from its own columns, and the refusals. */
import { describe, expect, it } from 'vitest';
import { expandedMetal } from '../../src/members/data/expanded-metal.js';
import { floorPlate } from '../../src/members/data/floor-plate.js';
import { lumberSizes } from '../../src/members/data/lumber-sizes.js';
import { ndsGravity } from '../../src/members/data/nds-gravity.js';
import { plateWeights } from '../../src/members/data/plate-weights.js';
import { sheetGauges } from '../../src/members/data/sheet-gauges.js';
import {
  aluminiumDensity,
  board,
  densityOfWood,
  expandedMetalWeight,
  flatBar,
  floorPlateWeight,
  type GaugeSystem,
  gaugeSystems,
  membersTables,
  plateWeight,
  roundBar,
  sheetWeight,
  steelDensity,
  steelDensityByPlate,
  type Wood,
} from '../../src/members/index.js';
import { weakestInputs } from '../../src/trace/index.js';
import { inch, lbPerFt3, mm, percent, ratio } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

describe('plate', () => {
  it.each([...plateWeights.rows])(
    '$nominal in weighs as printed at 490 lb/ft3 and at 40.8 lb/ft2 per inch',
    ({ thickness, weight, weightAt40_8 }) => {
      const at490 = rightOf(plateWeight(inch(thickness), steelDensity));
      expect(Math.abs(plain(at490) - Number(weight))).toBeLessThan(0.00051);
      expect(plain(rightOf(plateWeight(inch(thickness), steelDensityByPlate)))).toBeCloseTo(Number(weightAt40_8), 9);
      expectReplays(at490);
    },
  );
  it('weighs rubber by its maker and aluminium by its density', () => {
    expect(plain(rightOf(plateWeight(inch('0.5'), lbPerFt3(72))))).toBeCloseTo(3, 12);
    expect(plain(rightOf(plateWeight(mm('3.175'), aluminiumDensity)))).toBeCloseTo(1.764, 9);
  });
  it('refuses no thickness and no density', () => {
    expect(leftOf(plateWeight(inch(0), steelDensity))).toMatchObject({ tag: 'OutsideItsRange', what: 'thickness' });
    expect(leftOf(plateWeight(inch(1), lbPerFt3(-1)))).toMatchObject({ tag: 'OutsideItsRange', what: 'density' });
  });
});

describe('sheet gauges', () => {
  it.each<[GaugeSystem, number]>([
    ["manufacturers' standard", 5.624],
    ["manufacturers' standard, 490 lb/ft3", 5.4921],
    ['galvanized', 5.779],
    ['legal gauge, 15 U.S.C. 206', 5.625],
  ])('gauge 10 in %s', (system, weight) => {
    expect(plain(rightOf(sheetWeight(10, system)).weight)).toBe(weight);
  });
  it('answers every printed row in every system that prints it', () => {
    for (const row of sheetGauges.rows) {
      for (const system of Object.keys(gaugeSystems) as GaugeSystem[]) {
        const column = gaugeSystems[system][1];
        if (column in row)
          expect(plain(rightOf(sheetWeight(Number(row.gauge), system)).weight)).toBe(
            Number((row as unknown as Record<string, string>)[column]),
          );
        else
          expect(leftOf(sheetWeight(Number(row.gauge), system))).toMatchObject({
            tag: 'ColumnEmpty',
            row: `gauge ${row.gauge}`,
            column: system,
          });
      }
    }
  });
  it('keeps each column to its own law: 41.82, 490/12 and 40 lb/ft2 per inch; galvanized 0.156 above the standard weight', () => {
    for (const row of sheetGauges.rows) {
      if ('legal' in row) expect(Number(row.legal) * 40).toBe(Number(row.legalWeight));
      if ('standard' in row) {
        expect(Math.abs(Number(row.standard) * 41.82 - Number(row.standardWeight))).toBeLessThan(0.003);
        expect(Math.abs((Number(row.standard) * 490) / 12 - Number(row.weightAt490))).toBeLessThan(0.0001);
      }
      if ('galvanizedWeight' in row && 'standardWeight' in row)
        expect(Number(row.galvanizedWeight) - Number(row.standardWeight)).toBeCloseTo(0.156, 2);
    }
  });
  it('names the nearest of an unprinted gauge', () => {
    expect(leftOf(sheetWeight(2, 'galvanized'))).toMatchObject({ tag: 'NotTabulated', nearest: ['3', '4', '5'] });
  });
});

describe('floor plate and mesh', () => {
  it('shows that floor plate is from memory', () => {
    for (const row of floorPlate.rows) {
      const found = rightOf(floorPlateWeight(row.nominal));
      expect(plain(found.weight)).toBe(Number(row.weight));
      expect(found).toMatchObject({ grade: 'memory', notes: [{ tag: 'WantsVerifying' }] });
    }
    expect(weakestInputs(rightOf(floorPlateWeight('1/8')).weight).inputs[0]).toMatchObject({
      source: { grade: 'memory' },
    });
  });
  it('floor plate is plain plate plus 1.05 lb/ft2 from 1/8 in up', () => {
    for (const row of floorPlate.rows.filter(({ thickness }) => Number(thickness) >= 0.125))
      expect(Math.abs(Number(row.weight) - (490 / 12) * Number(row.thickness) - 1.055)).toBeLessThan(0.01);
  });
  it('says which mesh weights were paired by the reader', () => {
    const byReader = expandedMetal.rows
      .filter(({ style }) => rightOf(expandedMetalWeight(style)).notes[0]?.says.includes('reader') === true)
      .map(({ style }) => style);
    expect(expandedMetal.rows.map(({ style }) => style).filter((style) => !byReader.includes(style as never))).toEqual([
      '1/2 #13',
      '3/4 #9',
    ]);
    expect(plain(rightOf(expandedMetalWeight('3/4 #9')).weight)).toBe(1.8);
  });
  it('refuses unlisted styles', () => {
    expect(leftOf(floorPlateWeight('1/16')).tag).toBe('NotTabulated');
    expect(leftOf(expandedMetalWeight('2 #9')).tag).toBe('NotTabulated');
  });
});

describe('boards', () => {
  const at35: Wood = { by: 'density', density: lbPerFt3(35) };
  it('2x10 at 35 lb/ft3 weighs 3.37 lb/ft (two secondary tables); so does every row that prints one', () => {
    for (const row of lumberSizes.rows) {
      const found = rightOf(board(row.nominal, at35));
      expect(plain(found.thickness) * plain(found.width)).toBe(Number(row.area));
      if ('weightAt35' in row)
        expect(Math.abs(plain(found.weightPerFoot) - Number(row.weightAt35))).toBeLessThan(0.0151);
      expectReplays(found.weightPerFoot, found.weightPerSquareFoot);
    }
    expect(plain(rightOf(board('2 X 10', at35)).weightPerFoot)).toBeCloseTo(3.37, 2);
  });
  it('every NDS row gives its densities at 12, 15 and 19 %', () => {
    for (const row of ndsGravity.rows) {
      for (const [moisture, density] of [
        [12, row.densityAt12],
        [15, row.densityAt15],
        [19, row.densityAt19],
      ] as const) {
        const found = rightOf(densityOfWood({ by: 'NDS gravity', species: row.species, moisture: percent(moisture) }));
        expect(Math.abs(plain(found) - Number(density)), `${row.species} ${moisture}`).toBeLessThan(0.0051);
        expectReplays(found);
      }
    }
  });
  it('keeps the two gravities apart: southern red oak by handbook, loblolly at 12 %', () => {
    expect(plain(rightOf(densityOfWood({ by: 'handbook gravity at 12 %', species: 'Oak, southern red' })))).toBeCloseTo(
      62.4 * 0.59 * 1.12,
      10,
    );
    expect(leftOf(densityOfWood({ by: 'handbook gravity at 12 %', species: 'Southern Pine' })).tag).toBe(
      'NotTabulated',
    );
    expect(leftOf(densityOfWood({ by: 'NDS gravity', species: 'Pine, loblolly', moisture: percent(12) })).tag).toBe(
      'NotTabulated',
    );
    expect(leftOf(densityOfWood({ by: 'handbook gravity at 12 %', species: 'Keruing / apitong' }))).toMatchObject({
      tag: 'ColumnEmpty',
    });
    expect(leftOf(densityOfWood({ by: 'air-dry range', species: 'Oak, white', end: 'low' }))).toMatchObject({
      tag: 'ColumnEmpty',
    });
  });
  it('takes moisture as a share or in per cent, and neither above 30 % nor below 0', () => {
    const of = (moisture: Extract<Wood, { by: 'NDS gravity' }>['moisture']) =>
      densityOfWood({ by: 'NDS gravity', species: 'Hem-Fir', moisture });
    expect(plain(rightOf(of(ratio('0.19'))))).toBeCloseTo(plain(rightOf(of(percent(19)))), 12);
    expect(leftOf(of(percent('30.1'))).tag).toBe('OutsideItsRange');
    expect(leftOf(of(percent(-1))).tag).toBe('OutsideItsRange');
  });
  it('a freshly treated 2x8 weighs near twice a dry one', () => {
    const wet = rightOf(board('2x8', { by: 'treated', state: 'freshly treated', end: 'high' }));
    const dry = rightOf(board('2x8', { by: 'NDS gravity', species: 'Southern Pine', moisture: percent(12) }));
    expect(plain(wet.weightPerFoot) / plain(dry.weightPerFoot)).toBeCloseTo(73 / 36.28, 2);
    expect(plain(rightOf(densityOfWood({ by: 'air-dry range', species: 'Keruing / apitong', end: 'high' })))).toBe(50);
  });
  it('refuses sizes the table leaves out, and no size at all', () => {
    expect(leftOf(board('6x8', at35))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(board({ thickness: inch(0), width: inch(6) }, at35))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(board('2x8', { by: 'density', density: lbPerFt3(0) }))).toMatchObject({ tag: 'OutsideItsRange' });
  });
});

describe('bars', () => {
  it('flat and round', () => {
    const [flat, round] = [
      rightOf(flatBar(inch('0.25'), inch(3), steelDensity)),
      rightOf(roundBar(inch(1), steelDensity)),
    ];
    expect(plain(flat.weightPerFoot)).toBeCloseTo(2.552, 3);
    expect(plain(round.weightPerFoot)).toBeCloseTo(2.673, 3);
    expectReplays(flat.weightPerFoot, round.weightPerFoot);
    expect(leftOf(roundBar(inch(0), steelDensity)).tag).toBe('OutsideItsRange');
    expect(leftOf(flatBar(inch(1), inch(-1), steelDensity)).tag).toBe('OutsideItsRange');
  });
});

describe('tables', () => {
  it('every table of the chapter has rows, a source and an authoritative column', () => {
    expect(membersTables).toHaveLength(20);
    for (const table of membersTables) {
      expect(table.rows.length).toBeGreaterThan(1);
      expect(table.source.title.length * table.authoritative.length).toBeGreaterThan(0);
    }
  });
});
