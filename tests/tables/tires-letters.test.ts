/** Speed symbols (SP-1, SP-2, SP-3), load ranges (LR-1, LR-2) and their pressures (LR-4), typed again; web lists, grade C. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { familyPressureTable, loadRange, loadRangeTable, rangePressure, speedSymbol, speedSymbolTable, type TireFamily } from '../../src/tires/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

/** Symbol, km/h, mph as printed, in order of speed. */
const symbols = `
A1 5 3; A2 10 6; A3 15 9; A4 20 12; A5 25 16; A6 30 19; A7 35 22; A8 40 25; B 50 31; C 60 37; D 65 40; E 70 43; F 80 50;
G 90 56; J 100 62; K 110 68; L 120 75; M 130 81; N 140 87; P 150 94; Q 160 100; R 170 106; S 180 112; T 190 118; U 200
124; H 210 130; V 240 149; W 270 168; Y 300 186; (Y) 300 186
`.trim().split(/;\s+/).map((row) => row.split(/\s+/));

describe('speed symbols', () => {
  it('has the printed rows, no more and no less', () => {
    expect(speedSymbolTable.rows.map(([symbol, kmh, mph]) => [symbol, kmh, mph])).toEqual(symbols);
  });
  it('answers each', () => {
    for (const [place, [symbol = '', kmh, mph]] of symbols.entries()) {
      const found = rightOf(speedSymbol(symbol));
      expectReplays(found.kmh, found.mph);
      expect([found.kmh.value.value.toFixed(), found.mph.value.value.toFixed(), found.rank, found.openEnded]).toEqual([kmh, mph, place, symbol === '(Y)']);
    }
  });
  it('prints the nearest mph, save P and Q, one more', () => {
    const off = symbols.filter(([, kmh, mph]) => Math.round(Number(kmh) / 1.609344) !== Number(mph)).map(([symbol]) => symbol);
    expect(off).toEqual(['P', 'Q']);
  });
  it('puts H between U and V', () => {
    const rank = (symbol: string): number => rightOf(speedSymbol(symbol)).rank;
    expect(rank('U') < rank('H') && rank('H') < rank('V')).toBe(true);
  });
  it.each(['I', 'O', 'X', 'Z', 'ZR', 'A9', '', 'constructor'])('refuses %j', (symbol) => {
    expect(isLeft(speedSymbol(symbol))).toBe(true);
  });
});

describe('load ranges', () => {
  const letters = 'A 2; B 4; C 6; D 8; E 10; F 12; G 14; H 16; J 18; L 20; M 22; N 24'.split('; ').map((row) => row.split(' '));
  it('has the printed rows and answers each', () => {
    expect(loadRangeTable.rows).toEqual(letters);
    for (const [letter = '', ply] of letters) expect(rightOf(loadRange(letter))).toMatchObject({ letter, plyRating: Number(ply) });
  });
  it.each(['I', 'K', 'O', 'P', '', 'DD', '__proto__'])('refuses %j', (letter) => {
    expect(isLeft(loadRange(letter))).toBe(true);
  });
});

describe('pressure by family', () => {
  const lt = (family: string): string[] => ['B 35 240', 'C 50 350', 'D 65 450', 'E 80 550', 'F 95 650'].map((row) => `${family} ${row}`);
  const typed = [
    'ST-metric B 35 240', 'ST-metric C 50 350', 'ST-metric D 65 450', 'ST-metric E 80 550', ...lt('LT-metric'), ...lt('LT-numeric'), ...lt('LT-flotation'),
    'P-metric LL 35 240', 'P-metric SL 35 240', 'P-metric XL 41 280', 'Euro-metric SL 36 250', 'Euro-metric XL 42 290', 'Euro-metric RF 42 290',
  ];
  it('has the printed rows, no more and no less', () => {
    expect(familyPressureTable.rows.map((row) => row.join(' ')).sort()).toEqual([...typed].sort());
  });
  it('answers each', () => {
    for (const [family, letter = '', psi, kPa] of typed.map((row) => row.split(' '))) {
      const found = rightOf(rangePressure(family as TireFamily, letter));
      expectReplays(found.pressure);
      expect([found.pressure.value.value.toFixed(), found.kPa?.value.value.toFixed()]).toEqual([psi, kPa]);
    }
  });
});
