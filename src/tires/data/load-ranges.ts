/** Load range and ply rating: source LR-1. There is no I and no K. */
import type { LoadRangeRow } from '../rows.js';

export const loadRanges = [
  ['A', '2'],
  ['B', '4'],
  ['C', '6'],
  ['D', '8'],
  ['E', '10'],
  ['F', '12'],
  ['G', '14'],
  ['H', '16'],
  ['J', '18'],
  ['L', '20'],
  ['M', '22'],
  ['N', '24'],
] as const satisfies readonly LoadRangeRow[];
