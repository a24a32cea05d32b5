/** All tables of this chapter, for the list of sources. */
import type { Table } from '../trace/index.js';
import { federalTable } from './federal.js';
import { agencyLetters } from './letters.js';

export const rulesTables: readonly Table<unknown>[] = [federalTable, agencyLetters];
