/** Boards, wood and bars: every printed row from its own columns, and the refusals. */
import { describe, expect, it } from 'vitest';
import { lumberSizes } from '../../../src/members/data/lumber-sizes.js';
import { ndsGravity } from '../../../src/members/data/nds-gravity.js';
import { board, densityOfWood, flatBar, roundBar, steelDensity, type Wood } from '../../../src/members/index.js';
import { inch, lbPerFt3, percent, ratio } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

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
