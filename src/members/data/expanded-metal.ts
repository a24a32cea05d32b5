/** Expanded metal, raised: weight in lb/ft2 by style. Rows not marked firm pair style and weight by the reader of the page. */
import type { Table } from '../../trace/index.js';
import type { ExpandedMetalRow } from '../stock/stock-rows.js';

export const expandedMetal = {
  name: 'expanded metal',
  source: { id: 'expanded-metal-catalogue', title: 'steel service-centre catalogue page', grade: 'C', note: 'only 1/2 #13 and 3/4 #9 were printed as pairs' },
  authoritative: 'weight in lb/ft2',
  rows: [
    { style: '1/2 #20', weight: '0.43', pairing: 'by the reader' },
    { style: '1/2 #18', weight: '0.7', pairing: 'by the reader' },
    { style: '1/2 #16', weight: '0.86', pairing: 'by the reader' },
    { style: '1/2 #13', weight: '1.47', pairing: 'printed' },
    { style: '3/4 #16', weight: '0.54', pairing: 'by the reader' },
    { style: '3/4 #13', weight: '0.8', pairing: 'by the reader' },
    { style: '3/4 #10', weight: '1.2', pairing: 'by the reader' },
    { style: '3/4 #9', weight: '1.8', pairing: 'printed' },
    { style: '1 #16', weight: '0.44', pairing: 'by the reader' },
    { style: '1-1/2 #18', weight: '0.2', pairing: 'by the reader' },
    { style: '1-1/2 #16', weight: '0.4', pairing: 'by the reader' },
    { style: '1-1/2 #13', weight: '0.6', pairing: 'by the reader' },
    { style: '1-1/2 #10', weight: '0.79', pairing: 'by the reader' },
    { style: '1-1/2 #9', weight: '1.2', pairing: 'by the reader' },
  ],
} as const satisfies Table<ExpandedMetalRow>;
