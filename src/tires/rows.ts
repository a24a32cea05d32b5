/** The rows of the published tables, as they are typed from the print: figures are text, so that no digit is lost. */

export type LoadIndexRow = readonly [index: string, kg: string];
export type SpeedSymbolRow = readonly [symbol: string, kmh: string, mph: string, openEnded: boolean];
export type LoadRangeRow = readonly [letter: string, plyRating: string];
export type FamilyPressureRow = readonly [family: string, letter: string, psi: string, kPa: string];
export type InflationRow = readonly [size: string, letter: string, psi: string, single: string, dual: string];
export type DiameterRow = readonly [
  size: string,
  inches: string,
  revolutions: string,
  source: 'ST-3' | 'LT-3' | 'LT-3b',
  pattern: string,
];
export type AliasRow = readonly [written: string, size: string];
