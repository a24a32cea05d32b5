/** The published tables of this chapter. */
import type { Table } from '../trace/index.js';
import { bulkDensity } from './data/bulk-density.js';
import { chainWll } from './data/chain-wll.js';
import { securementForces } from './data/securement-forces.js';
import { tongueGuidance } from './data/tongue-guidance.js';
import { webbingWll } from './data/webbing-wll.js';
import { wireRopeWll } from './data/wire-rope-wll.js';

export const loadTables: readonly Table<unknown>[] = [
  tongueGuidance,
  chainWll,
  webbingWll,
  wireRopeWll,
  securementForces,
  bulkDensity,
];
