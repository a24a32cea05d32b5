/** The agency letters on GVWR, GAWR and tongue load: those on trailers, and the general ones that differ. */
import type { Table } from '../../trace/index.js';
import { letterRows } from '../data/letters.js';
import type { AgencyLetter } from './agency-letter.js';

export type { AgencyLetter } from './agency-letter.js';

/**
 * What has the agency written about the ratings of a trailer?
 *
 * Guidance, not rule text. Where the two kinds disagree (may the GAWRs add up to less than the GVWR?), this library follows
 * the trailer letters and shows the others.
 *
 * @example agencyLetters.rows.filter(({ speaksOf }) => speaksOf === 'general')
 * @source NHTSA interpretation letters, each row by its number and date
 */
export const agencyLetters: Table<AgencyLetter> = {
  name: 'agency letters on GVWR, GAWR and tongue',
  source: {
    id: 'nhtsa-letters',
    title: 'NHTSA interpretation letters',
    grade: 'A',
    edition: '1971 to 1980, read November 2026',
    clause: '49 CFR 567.4(g), 571.3',
  },
  authoritative: 'the trailer letters, for trailers',
  rows: letterRows,
};
