/** Raised-pattern steel floor plate, lb/ft2 by thickness without the pattern. The whole table is from memory. */
import type { Table } from '../../trace/index.js';
import type { FloorPlateRow } from '../stock/stock-rows.js';

export const floorPlate = {
  name: 'raised-pattern floor plate',
  source: { id: 'floor-plate-memory', title: 'older AISC Manual Part 1 table, page not read, from memory', grade: 'memory' },
  authoritative: 'weight in lb/ft2',
  rows: [
    { nominal: '18 ga', thickness: '0.0478', weight: '2.4', pattern: '0.448' },
    { nominal: '16 ga', thickness: '0.0598', weight: '3.0', pattern: '0.558' },
    { nominal: '14 ga', thickness: '0.0747', weight: '3.75', pattern: '0.700' },
    { nominal: '13 ga', thickness: '0.0897', weight: '4.5', pattern: '0.837' },
    { nominal: '12 ga', thickness: '0.1046', weight: '5.25', pattern: '0.979' },
    { nominal: '1/8', thickness: '0.125', weight: '6.16', pattern: '1.056' },
    { nominal: '3/16', thickness: '0.1875', weight: '8.71', pattern: '1.054' },
    { nominal: '1/4', thickness: '0.25', weight: '11.26', pattern: '1.052' },
    { nominal: '5/16', thickness: '0.3125', weight: '13.81', pattern: '1.050' },
    { nominal: '3/8', thickness: '0.375', weight: '16.37', pattern: '1.058' },
    { nominal: '1/2', thickness: '0.5', weight: '21.47', pattern: '1.053' },
    { nominal: '5/8', thickness: '0.625', weight: '26.58', pattern: '1.059' },
    { nominal: '3/4', thickness: '0.75', weight: '31.68', pattern: '1.055' },
    { nominal: '7/8', thickness: '0.875', weight: '36.79', pattern: '1.061' },
    { nominal: '1', thickness: '1', weight: '41.89', pattern: '1.057' },
  ],
} as const satisfies Table<FloorPlateRow>;
