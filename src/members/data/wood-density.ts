/** Specific gravity of single species: basic (oven-dry weight, green volume) and at 12 % moisture. Each row has its own source. */
import type { Table } from '../../trace/index.js';
import type { WoodDensityRow } from '../stock/stock-rows.js';

const engineering = { id: 'wood-engineering', title: 'UFC 3-130-04 / TM 5-852-4 Table 2-2 (Forest Products Laboratory data)', grade: 'A' } as const;
const laboratoryCopy = { id: 'wood-laboratory-copy', title: 'secondary page quoting the Forest Products Laboratory', grade: 'C' } as const;
const handbookMemory = { id: 'wood-handbook-memory', title: 'Wood Handbook Table 5-3b, from memory', grade: 'memory' } as const;
const handbookCopy = { id: 'wood-handbook-copy', title: 'secondary page quoting the Wood Handbook', grade: 'C' } as const;
const handbookTwo = { id: 'wood-handbook-chapter-2', title: 'Wood Handbook FPL-GTR-190 ch. 2 (air-dry density); basic gravity is from memory', grade: 'A' } as const;

export const woodDensity = {
  name: 'wood density by species',
  source: { id: 'wood-species', title: 'Wood Handbook figures by several copies, named row by row', grade: 'C' },
  authoritative: 'specific gravity at 12 % moisture',
  rows: [
    { species: 'Pine, loblolly', basic: '0.47', at12: '0.51', source: engineering },
    { species: 'Pine, longleaf', basic: '0.54', at12: '0.59', source: laboratoryCopy },
    { species: 'Pine, shortleaf', basic: '0.47', at12: '0.51', source: handbookMemory },
    { species: 'Pine, slash', basic: '0.54', at12: '0.59', source: handbookMemory },
    { species: 'Douglas-fir, coast', basic: '0.45', at12: '0.48', source: engineering, note: 'basic gravity is from memory' },
    { species: 'Oak, white', basic: '0.6', at12: '0.68', source: handbookMemory, note: 'another copy has 0.59 basic and 0.67' },
    { species: 'Oak, white (bur)', basic: '0.58', at12: '0.64', source: handbookCopy },
    { species: 'Oak, northern red', basic: '0.56', at12: '0.63', source: handbookMemory },
    { species: 'Oak, southern red', basic: '0.52', at12: '0.59', source: handbookMemory },
    { species: 'Keruing / apitong', basic: '0.69', airDryLow: '45', airDryHigh: '50', source: handbookTwo, note: 'air-dry density is printed as a range; trade pages spread wider' },
  ],
} as const satisfies Table<WoodDensityRow>;
