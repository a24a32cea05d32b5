/** Treated boards: the retained preservative weighs next to nothing, the water of the treatment does not. lb/ft3. */
import type { Table } from '../../trace/index.js';
import type { TreatedWoodRow } from '../stock/stock-rows.js';

export const treatedWood = {
  name: 'treated wood',
  source: { id: 'treated-wood', title: 'secondary figures for treated boards, from which these densities follow', grade: 'C' },
  authoritative: 'density in lb/ft3',
  rows: [
    { state: 'freshly treated', low: '70', high: '73' },
    { state: 'treated, dried', low: '40', high: '41' },
  ],
} as const satisfies Table<TreatedWoodRow>;
