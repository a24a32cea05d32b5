/** The published tables of this chapter. */
import type { Table } from '../trace/index.js';
import { tongueGuidance } from './data/tongue-guidance.js';

export const loadTables: readonly Table<unknown>[] = [tongueGuidance];
