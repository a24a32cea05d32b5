/** The words for what can go wrong with members. */
import { fromWire, mustBe } from '../units/index.js';
import { showInWords } from '../units/internal.js';
import type { OwnMembersError } from './errors.js';

export function wordsForMembers(error: OwnMembersError): string {
  switch (error.tag) {
    case 'UnreadableDesignation':
      return `"${error.text}" is not the name of a section; write ${error.needed}`;
    case 'ImpossibleShape':
      return mustBe(
        error.what,
        showInWords(fromWire(error.found)),
        `${error.needed} (${showInWords(fromWire(error.limit))})`,
      );
    case 'NothingListed':
      return `the list of ${error.what} is empty; list at least one`;
    case 'NoOutline':
      return `no outline comes close to the published figures of ${error.designation}: ${error.why}; use its table, or an outline with measured dimensions`;
    case 'ColumnEmpty':
      return `the table ${error.table} has no ${error.column} for ${error.row}; choose a column that this row has`;
  }
}
