/** The least web of each depth of American standard channel, inches: it sets the root and toe radii of the whole depth. */
import type { Table } from '../../trace/index.js';
import type { LeastWebRow } from '../sections/shape-rows.js';

export const leastWebs = {
  name: 'least web of each channel depth',
  source: { id: 'least-webs', title: 'least web by depth; root radius least web + 0.10 in, toe radius 0.6 of it: rule from memory, borne out by the published properties', grade: 'memory' },
  authoritative: 'least web in inches',
  rows: [
    { depth: '3', web: '0.17' },
    { depth: '4', web: '0.18' },
    { depth: '5', web: '0.19' },
    { depth: '6', web: '0.20' },
    { depth: '7', web: '0.21' },
    { depth: '8', web: '0.22' },
    { depth: '9', web: '0.23' },
    { depth: '10', web: '0.24' },
    { depth: '12', web: '0.28' },
  ],
} as const satisfies Table<LeastWebRow>;
