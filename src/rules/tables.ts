/** All tables of this chapter, for the list of sources. */
import type { Table } from '../trace/index.js';
import { agencyLetters } from './federal/agency-letters.js';
import { federalTable } from './federal/federal.js';

export const rulesTables: readonly Table<unknown>[] = [federalTable, agencyLetters];
