/** Specific gravity by oven-dry weight and oven-dry volume. The densities beside it are computed from it. */
import type { Table } from '../../trace/index.js';
import type { NdsGravityRow } from '../stock/stock-rows.js';

export const ndsGravity = {
  name: 'NDS specific gravity',
  source: { id: 'nds-12.3.3A', title: 'NDS, reproduction; densities computed', grade: 'B', edition: '2018', clause: 'Table 12.3.3A' },
  authoritative: 'specific gravity, oven-dry weight and volume',
  rows: [
    { species: 'Southern Pine', gravity: '0.55', densityAt12: '36.28', densityAt15: '36.74', densityAt19: '37.33' },
    { species: 'Mixed Southern Pine', gravity: '0.51', densityAt12: '33.78', densityAt15: '34.24', densityAt19: '34.83' },
    { species: 'Douglas Fir-Larch', gravity: '0.5', densityAt12: '33.15', densityAt15: '33.61', densityAt19: '34.20' },
    { species: 'Douglas Fir-Larch (North)', gravity: '0.49', densityAt12: '32.52', densityAt15: '32.98', densityAt19: '33.57' },
    { species: 'Douglas Fir-South', gravity: '0.46', densityAt12: '30.63', densityAt15: '31.08', densityAt19: '31.67' },
    { species: 'Hem-Fir', gravity: '0.43', densityAt12: '28.72', densityAt15: '29.16', densityAt19: '29.74' },
    { species: 'Spruce-Pine-Fir', gravity: '0.42', densityAt12: '28.08', densityAt15: '28.52', densityAt19: '29.10' },
    { species: 'Mixed Oak', gravity: '0.68', densityAt12: '44.27', densityAt15: '44.69', densityAt19: '45.23' },
    { species: 'Northern Red Oak', gravity: '0.68', densityAt12: '44.27', densityAt15: '44.69', densityAt19: '45.23' },
    { species: 'Red Oak', gravity: '0.67', densityAt12: '43.67', densityAt15: '44.09', densityAt19: '44.64' },
    { species: 'White Oak', gravity: '0.73', densityAt12: '47.29', densityAt15: '47.69', densityAt19: '48.19' },
  ],
} as const satisfies Table<NdsGravityRow>;
