/** Every error of the chapter in words: one sentence each. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import type { OwnMembersError } from '../../src/members/index.js';
import { inch, toWire } from '../../src/units/index.js';

const chapter = 'members';
const said: Record<OwnMembersError['tag'], readonly [OwnMembersError, string]> = {
  UnreadableDesignation: [
    { chapter, tag: 'UnreadableDesignation', text: 'rail', needed: 'letters and figures' },
    '"rail" is not the name of a section; write letters and figures',
  ],
  ImpossibleShape: [
    {
      chapter,
      tag: 'ImpossibleShape',
      what: 'flange width',
      found: toWire(inch('0.1')),
      needed: 'wider than the web',
      limit: toWire(inch('0.2')),
    },
    'flange width is 0.1 in; it must be wider than the web (0.2 in)',
  ],
  NothingListed: [
    { chapter, tag: 'NothingListed', what: 'frame parts' },
    'the list of frame parts is empty; list at least one',
  ],
  NoOutline: [
    { chapter, tag: 'NoOutline', designation: 'M6X4.4', why: 'no model' },
    'no outline comes close to the published figures of M6X4.4: no model; use its table, or an outline with measured dimensions',
  ],
  ColumnEmpty: [
    { chapter, tag: 'ColumnEmpty', table: 'sheet gauges', row: 'gauge 29', column: 'galvanized' },
    'the table sheet gauges has no galvanized for gauge 29; choose a column that this row has',
  ],
};

describe('errors in words', () => {
  it.each(Object.entries(said))('%s', (_, [error, words]) => expect(describeError(error)).toBe(words));
});
