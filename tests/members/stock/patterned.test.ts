/** Floor plate and mesh: every printed row, and the refusals. */
import { describe, expect, it } from 'vitest';
import { expandedMetal } from '../../../src/members/data/expanded-metal.js';
import { floorPlate } from '../../../src/members/data/floor-plate.js';
import { expandedMetalWeight, floorPlateWeight } from '../../../src/members/index.js';
import { weakestInputs } from '../../../src/trace/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';

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
