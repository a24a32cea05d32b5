/** What loose material weighs by the cubic foot: a start, to be replaced by the ticket of the pit or the yard. From memory. */
import type { Table } from '../../trace/index.js';

export interface BulkRow {
  readonly material: string;
  /** Least and most that is met with, lb/ft3, loose as loaded. */
  readonly low: string;
  readonly high: string;
}

export const bulkDensity = {
  name: 'loose material by volume',
  source: { id: 'bulk-density', title: 'weights of loose material by the cubic foot, from memory', grade: 'memory', note: 'moisture and packing move these by a third; a scale ticket governs' },
  authoritative: 'lb/ft3',
  rows: [
    { material: 'sand, dry', low: '90', high: '105' },
    { material: 'sand, wet', low: '110', high: '130' },
    { material: 'gravel', low: '95', high: '115' },
    { material: 'crushed stone', low: '85', high: '105' },
    { material: 'topsoil, loose', low: '60', high: '80' },
    { material: 'earth, wet', low: '95', high: '115' },
    { material: 'clay, wet', low: '100', high: '125' },
    { material: 'broken concrete', low: '75', high: '100' },
    { material: 'broken asphalt', low: '70', high: '95' },
    { material: 'bricks, stacked', low: '100', high: '125' },
    { material: 'mulch', low: '15', high: '35' },
    { material: 'compost', low: '35', high: '55' },
    { material: 'firewood, stacked', low: '25', high: '45' },
    { material: 'road salt', low: '70', high: '85' },
    { material: 'snow, packed', low: '20', high: '40' },
    { material: 'water', low: '62.4', high: '62.4' },
  ],
} as const satisfies Table<BulkRow>;
