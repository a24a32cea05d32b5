/** Dressed dry softwood sizes in inches. 5/4x6 is radius-edge decking, from one secondary page. Hardwood dresses thicker: weigh it by measured size. */
import type { Table } from '../../trace/index.js';
import type { LumberRow } from '../stock/stock-rows.js';

export const lumberSizes = {
  name: 'dressed lumber sizes',
  source: { id: 'ps20-secondary', title: 'two secondary tables quoting PS 20 that agree (5/4x6: one)', grade: 'C', edition: 'edition not stated' },
  authoritative: 'dressed thickness and width in inches',
  rows: [
    { nominal: '1x4', thickness: '0.75', width: '3.5', area: '2.6250', weightAt35: '0.64' },
    { nominal: '1x6', thickness: '0.75', width: '5.5', area: '4.1250', weightAt35: '1.0' },
    { nominal: '1x8', thickness: '0.75', width: '7.25', area: '5.4375', weightAt35: '1.32' },
    { nominal: '1x10', thickness: '0.75', width: '9.25', area: '6.9375', weightAt35: '1.69' },
    { nominal: '1x12', thickness: '0.75', width: '11.25', area: '8.4375', weightAt35: '2.05' },
    { nominal: '5/4x6', thickness: '1.0', width: '5.5', area: '5.5000' },
    { nominal: '2x4', thickness: '1.5', width: '3.5', area: '5.2500', weightAt35: '1.28' },
    { nominal: '2x6', thickness: '1.5', width: '5.5', area: '8.2500', weightAt35: '2.0' },
    { nominal: '2x8', thickness: '1.5', width: '7.25', area: '10.8750', weightAt35: '2.64' },
    { nominal: '2x10', thickness: '1.5', width: '9.25', area: '13.8750', weightAt35: '3.37' },
    { nominal: '2x12', thickness: '1.5', width: '11.25', area: '16.8750', weightAt35: '4.1' },
    { nominal: '3x6', thickness: '2.5', width: '5.5', area: '13.7500', weightAt35: '3.34' },
    { nominal: '3x8', thickness: '2.5', width: '7.25', area: '18.1250', weightAt35: '4.41' },
    { nominal: '4x4', thickness: '3.5', width: '3.5', area: '12.2500', weightAt35: '2.98' },
    { nominal: '4x6', thickness: '3.5', width: '5.5', area: '19.2500', weightAt35: '4.68' },
  ],
} as const satisfies Table<LumberRow>;
