/** Every published table of this chapter: the rows of `data/` with their sources and authoritative columns. */
import type { Source, Table } from '../trace/index.js';
import { aliases } from './data/aliases.js';
import { diameters } from './data/diameters.js';
import { familyPressures } from './data/family-pressures.js';
import { lt4 } from './data/inflation-flotation.js';
import { lt1, lt2, lt3, lt5, pl1, tr2 } from './data/inflation-lt.js';
import { memory, st3Small, st7 } from './data/inflation-small.js';
import { st1, st2, st3, st3Disputed, st4, st5, st6 } from './data/inflation-st.js';
import { loadIndexLow } from './data/load-index-0-99.js';
import { loadIndexMiddle } from './data/load-index-100-180.js';
import { loadIndexHigh } from './data/load-index-181-200.js';
import { loadRanges } from './data/load-ranges.js';
import { sources } from './data/sources.js';
import { speedSymbols } from './data/speed-symbols.js';
import type {
  AliasRow,
  DiameterRow,
  FamilyPressureRow,
  InflationRow,
  LoadIndexRow,
  LoadRangeRow,
  SpeedSymbolRow,
} from './rows.js';

/** A table of loads at pressures. `covers` says whether a row covers the construction it prints or radial and bias alike. */
export interface InflationTable extends Table<InflationRow> {
  readonly covers: 'as printed' | 'radial and bias';
}

export const loadIndexTable: Table<LoadIndexRow> = {
  name: 'load index 0-180',
  source: sources.loadIndex,
  authoritative: 'kg',
  rows: [...loadIndexLow, ...loadIndexMiddle],
};
export const loadIndexHighTable: Table<LoadIndexRow> = {
  name: 'load index 181-200',
  source: sources.loadIndexHigh,
  authoritative: 'kg',
  rows: loadIndexHigh,
};
export const speedSymbolTable: Table<SpeedSymbolRow> = {
  name: 'speed symbols',
  source: sources.speedSymbols,
  authoritative: 'km/h',
  rows: speedSymbols,
};
export const loadRangeTable: Table<LoadRangeRow> = {
  name: 'load ranges',
  source: sources.plyRatings,
  authoritative: 'letter',
  rows: loadRanges,
};
export const familyPressureTable: Table<FamilyPressureRow> = {
  name: 'pressure by family and load range',
  source: sources.rangePressures,
  authoritative: 'psi',
  rows: familyPressures,
};
export const aliasTable: Table<AliasRow> = {
  name: 'size aliases',
  source: sources.aliases,
  authoritative: 'size',
  rows: aliases,
};

const bySource = (id: DiameterRow[3], source: Source): Table<DiameterRow> => ({
  name: `diameters ${id}`,
  source,
  authoritative: 'inches',
  rows: diameters.filter((row: DiameterRow) => row[3] === id),
});
export const diameterTables: readonly Table<DiameterRow>[] = [
  bySource('ST-3', sources.st3),
  bySource('LT-3', sources.lt3),
  bySource('LT-3b', sources.lt3b),
];

const inflation = (
  name: string,
  source: Source,
  covers: InflationTable['covers'],
  rows: readonly InflationRow[],
): InflationTable => ({ name, source, authoritative: 'lb', covers, rows });

/** Callers name one of these to keep to it; otherwise the lower figure governs. */
export const inflationTables: readonly InflationTable[] = [
  inflation('ST-1', sources.st1, 'radial and bias', st1),
  inflation('ST-2', sources.st2, 'as printed', st2),
  inflation('ST-3', sources.st3, 'radial and bias', [...st3, ...st3Small]),
  inflation('ST-4', sources.st4, 'as printed', st4),
  inflation('ST-5', sources.st5, 'as printed', st5),
  inflation('ST-6', sources.st6, 'as printed', st6),
  inflation('ST-7', sources.st7, 'as printed', st7),
  inflation('LT-1', sources.lt1, 'as printed', lt1),
  inflation('LT-2', sources.lt2, 'as printed', lt2),
  inflation('LT-3', sources.lt3, 'as printed', lt3),
  inflation('LT-4', sources.lt4, 'as printed', lt4),
  inflation('LT-5', sources.lt5, 'as printed', lt5),
  inflation('PL-1', sources.pl1, 'as printed', pl1),
  inflation('TR-2', sources.tr2, 'as printed', tr2),
  inflation('from memory', sources.memory, 'as printed', memory),
];

/** Printed rows that are never used for an answer, because their pressures are disputed. */
export const disputedTable: InflationTable = inflation(
  'ST-3, pressures disputed',
  sources.st3Disputed,
  'radial and bias',
  st3Disputed,
);

/** All tables of the chapter, for the list of sources. */
export const tiresTables: readonly Table<unknown>[] = [
  loadIndexTable,
  loadIndexHighTable,
  speedSymbolTable,
  loadRangeTable,
  familyPressureTable,
  aliasTable,
  ...diameterTables,
  ...inflationTables,
  disputedTable,
];
