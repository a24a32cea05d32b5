/** Laws over whole tables: columns that say the same thing agree, orders are kept. */
import { describe, expect, it } from 'vitest';
import { allowableBending } from '../../src/members/data/allowable-bending.js';
import { channels } from '../../src/members/data/channels.js';
import { leastWebs } from '../../src/members/data/least-webs.js';
import { plateWeights } from '../../src/members/data/plate-weights.js';
import { sheetGauges } from '../../src/members/data/sheet-gauges.js';
import { treatedWood } from '../../src/members/data/treated-wood.js';
import { woodDensity } from '../../src/members/data/wood-density.js';
import { allSections, type GaugeRow } from '../../src/members/index.js';
import { plain } from '../helpers/either.js';

const rising = (figures: readonly number[]): boolean =>
  figures.every((figure, i) => i === 0 || figure > (figures[i - 1] as number));
const gap = (a: number, b: number): number => Math.abs(a / b - 1);

const depthOf = ({ row }: ReturnType<typeof allSections>[number]): string | undefined => {
  if ('depth' in row) return row.depth;
  if ('height' in row) return row.height;
  return 'outside' in row ? row.outside : undefined;
};

describe('shapes', () => {
  it('print rx and ry as the root of I over A, within the rounding of three digits', () => {
    for (const one of allSections()) {
      expect(gap(Math.sqrt(plain(one.Ix) / plain(one.area)), plain(one.rx)), `${one.designation} rx`).toBeLessThan(
        0.01,
      );
      expect(gap(Math.sqrt(plain(one.Iy) / plain(one.area)), plain(one.ry)), `${one.designation} ry`).toBeLessThan(
        0.01,
      );
    }
  });
  it('print Sx as I over half the depth where the shape is symmetric about x', () => {
    for (const one of allSections()) {
      const depth = depthOf(one);
      if (depth !== undefined)
        expect(gap((2 * plain(one.Ix)) / Number(depth), plain(one.Sx)), one.designation).toBeLessThan(
          one.designation === 'Pipe1/2STD' ? 0.019 : 0.012,
        );
    }
  });
  it('print the design wall of tube as 0.93 of the nominal wall, within its rounding', () => {
    for (const { row, designation } of allSections())
      if ('designWall' in row)
        expect(Math.abs(Number(row.designWall) - 0.93 * Number(row.wall)), designation).toBeLessThan(0.0021);
  });
  it('say the nominal weight in the designation of channels and beams', () => {
    for (const { row, designation } of allSections())
      if ('depth' in row) expect(Number(designation.split('X')[1])).toBe(Number(row.weight));
  });
  it('have no designation twice', () => {
    const names = allSections().map(({ designation }) => designation);
    expect(new Set(names).size).toBe(names.length);
  });
  it('have a least web for the depth of every C row, rising with depth', () => {
    for (const row of channels.rows.filter(({ shape }) => shape === 'C'))
      expect(
        leastWebs.rows.some(({ depth }) => depth === row.depth),
        row.designation,
      ).toBe(true);
    expect(rising(leastWebs.rows.map(({ web }) => Number(web)))).toBe(true);
  });
});

describe('plate, sheet, stresses, wood', () => {
  it('plate rises with thickness; sheet falls with its gauge number in every system', () => {
    expect(rising(plateWeights.rows.map(({ weight }) => Number(weight)))).toBe(true);
    for (const column of [
      'standard',
      'standardWeight',
      'weightAt490',
      'galvanized',
      'galvanizedWeight',
      'legal',
      'legalWeight',
    ]) {
      const printed = sheetGauges.rows
        .map((row) => (row as unknown as Record<string, string | undefined>)[column])
        .filter((cell) => cell !== undefined)
        .map(Number);
      expect(rising([...printed].reverse()), column).toBe(true);
      expect(printed.length).toBeGreaterThan(17);
    }
  });
  it('legal gauge: No. 10 = 9/64 in = 5.625, No. 11 = 1/8 in = 5, No. 3 = 1/4 in = 10 lb/ft2 (15 U.S.C. 206, copy)', () => {
    const rows: readonly GaugeRow[] = sheetGauges.rows;
    const of = (gauge: string) => rows.find((row) => row.gauge === gauge);
    expect([of('10'), of('11'), of('3')].map((row) => [Number(row?.legal), Number(row?.legalWeight)])).toEqual([
      [9 / 64, 5.625],
      [1 / 8, 5],
      [1 / 4, 10],
    ]);
  });
  it('allowable stresses are their share of 36 and 50 ksi', () => {
    const shares = [0.66, 0.6, 1 / 1.67, 0.55];
    allowableBending.rows.forEach((row, i) => {
      expect(Number(row.a36)).toBeCloseTo(36 * (shares[i] as number), 2);
      expect(Number(row.grade50)).toBeCloseTo(50 * (shares[i] as number), 2);
    });
  });
  it('treated boards: fresh far above dry (secondary figures, verify)', () => {
    expect(treatedWood.rows.map(({ low, high }) => [Number(low), Number(high)])).toEqual([
      [70, 73],
      [40, 41],
    ]);
  });
  it('basic gravity goes to 12 % by Gb / (1 - 0.265 a Gb), a = 0.6, for pines and bur oak, and not for the other oaks: the printed column is used (formula from memory; 0.54 to 0.591: secondary quote)', () => {
    const at12 = (basic: number): number => basic / (1 - 0.265 * 0.6 * basic);
    expect(at12(0.54)).toBeCloseTo(0.591, 3);
    const misses = woodDensity.rows
      .filter((row) => 'at12' in row && Math.abs(at12(Number(row.basic)) - Number(row.at12)) > 0.006)
      .map(({ species }) => species);
    expect(misses).toEqual(['Oak, white', 'Oak, northern red', 'Oak, southern red']);
  });
});
