/** Plate weight by thickness, lb/ft2, at 490 lb/ft3 and at 40.8 lb/ft2 per inch. */
import type { Table } from '../../trace/index.js';
import type { PlateRow } from '../stock/stock-rows.js';

export const plateWeights = {
  name: 'plate weights',
  source: { id: 'plate-490', title: 'thickness x 490 lb/ft3', grade: 'derived', clause: 'density from Iowa DOT IM 569' },
  authoritative: 'weight at 490 lb/ft3',
  rows: [
    { nominal: '1/8', thickness: '0.125', weight: '5.104', weightAt40_8: '5.100' },
    { nominal: '3/16', thickness: '0.1875', weight: '7.656', weightAt40_8: '7.650' },
    { nominal: '1/4', thickness: '0.25', weight: '10.208', weightAt40_8: '10.200' },
    { nominal: '5/16', thickness: '0.3125', weight: '12.760', weightAt40_8: '12.750' },
    { nominal: '3/8', thickness: '0.375', weight: '15.312', weightAt40_8: '15.300' },
    { nominal: '7/16', thickness: '0.4375', weight: '17.865', weightAt40_8: '17.850' },
    { nominal: '1/2', thickness: '0.5', weight: '20.417', weightAt40_8: '20.400' },
    { nominal: '9/16', thickness: '0.5625', weight: '22.969', weightAt40_8: '22.950' },
    { nominal: '5/8', thickness: '0.625', weight: '25.521', weightAt40_8: '25.500' },
    { nominal: '3/4', thickness: '0.75', weight: '30.625', weightAt40_8: '30.600' },
    { nominal: '7/8', thickness: '0.875', weight: '35.729', weightAt40_8: '35.700' },
    { nominal: '1', thickness: '1', weight: '40.833', weightAt40_8: '40.800' },
  ],
} as const satisfies Table<PlateRow>;
