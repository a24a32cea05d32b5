/** Sheet by its gauge: every printed row from its own columns, and the refusals. */
import { describe, expect, it } from 'vitest';
import { sheetGauges } from '../../../src/members/data/sheet-gauges.js';
import { type GaugeSystem, gaugeSystems, sheetWeight } from '../../../src/members/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';

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
  it('cites the law for the legal gauge alone', () => {
    const sources = (Object.keys(gaugeSystems) as GaugeSystem[]).map((system) => {
      const { thickness, weight } = rightOf(sheetWeight(10, system));
      return [thickness, weight].map(({ why }) =>
        why.kind === 'looked up' ? why.source.id === '15-usc-206' : undefined,
      );
    });
    expect(sources).toEqual([
      [false, false],
      [false, false],
      [false, false],
      [true, true],
    ]);
  });
  it('names the nearest of an unprinted gauge', () => {
    expect(leftOf(sheetWeight(2, 'galvanized'))).toMatchObject({ tag: 'NotTabulated', nearest: ['3', '4', '5'] });
  });
});
