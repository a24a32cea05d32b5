/** The words for what can go wrong with members. */
import { type AskedFoundNeeded, show } from '../units/index.js';
import type { OwnMembersError } from './errors.js';

export function wordsForMembers(error: OwnMembersError): AskedFoundNeeded {
  switch (error.tag) {
    case 'UnreadableDesignation':
      return { asked: `the shape "${error.text}"`, found: 'a text that is not a designation', needed: error.needed };
    case 'FigureTooSmall':
      return { asked: error.what, found: show(error.found), needed: error.needed };
    case 'ImpossibleShape':
      return { asked: error.what, found: show(error.found), needed: `${error.needed} (${show(error.limit)})` };
    case 'NotWhole':
      return { asked: error.what, found: show(error.found), needed: 'a whole number' };
    case 'NothingListed':
      return { asked: error.what, found: 'an empty list', needed: 'at least one line' };
    case 'NoOutline':
      return {
        asked: `an outline of ${error.designation}`,
        found: error.why,
        needed: 'the published properties of the table, or an outline with measured dimensions',
      };
    case 'ColumnEmpty':
      return {
        asked: `${error.column} of ${error.row} in the table ${error.table}`,
        found: 'no figure in that column',
        needed: 'a column that this row has',
      };
    case 'MoistureOutOfRange':
      return {
        asked: 'the density of wood at a moisture content',
        found: show(error.found),
        needed:
          'a moisture content from 0 to 30 % of the oven-dry weight; wetter boards are weighed, or named as freshly treated',
      };
    case 'LoadOffTheBeam':
      return {
        asked: `the load ${error.load}`,
        found: `${show(error.found)} from the left end`,
        needed: `a place between 0 and ${show(error.limit)}`,
      };
    case 'UndecodableList':
      return { asked: 'a cut list or deck', found: error.found, needed: error.needed };
  }
}
