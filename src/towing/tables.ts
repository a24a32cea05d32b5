/** The published tables of this chapter. */
import type { Table } from '../trace/index.js';
import { couplerClasses } from './data/coupler-classes.js';
import { hitchTestForceTable } from './data/hitch-test-forces.js';

export const towingTables: readonly Table<unknown>[] = [couplerClasses, hitchTestForceTable];
