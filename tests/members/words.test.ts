/** Every error of the chapter in words: asked, found, needed. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import type { OwnMembersError } from '../../src/members/index.js';
import { inch, percent, ratio } from '../../src/units/index.js';

const chapter = 'members';
const said: Record<OwnMembersError['tag'], readonly [OwnMembersError, string]> = {
  UnreadableDesignation: [
    { chapter, tag: 'UnreadableDesignation', text: 'rail', needed: 'letters and figures' },
    'asked the shape "rail"; found a text that is not a designation; needed letters and figures',
  ],
  FigureTooSmall: [
    { chapter, tag: 'FigureTooSmall', what: 'span', found: inch(0), needed: 'more than zero', path: 'beam.span' },
    'beam.span: asked span; found 0 in; needed more than zero',
  ],
  ImpossibleShape: [
    {
      chapter,
      tag: 'ImpossibleShape',
      what: 'flange width',
      found: inch('0.1'),
      needed: 'wider than the web',
      limit: inch('0.2'),
    },
    'asked flange width; found 0.1 in; needed wider than the web (0.2 in)',
  ],
  NotWhole: [
    { chapter, tag: 'NotWhole', what: 'number of rails', found: ratio('1.5') },
    'asked number of rails; found 1.5; needed a whole number',
  ],
  NothingListed: [
    { chapter, tag: 'NothingListed', what: 'frame weight' },
    'asked frame weight; found an empty list; needed at least one line',
  ],
  NoOutline: [
    { chapter, tag: 'NoOutline', designation: 'M6X4.4', why: 'no model' },
    'asked an outline of M6X4.4; found no model; needed the published properties of the table, or an outline with measured dimensions',
  ],
  ColumnEmpty: [
    { chapter, tag: 'ColumnEmpty', table: 'sheet gauges', row: 'gauge 29', column: 'galvanized' },
    'asked galvanized of gauge 29 in the table sheet gauges; found no figure in that column; needed a column that this row has',
  ],
  MoistureOutOfRange: [
    { chapter, tag: 'MoistureOutOfRange', found: percent(40) },
    'asked the density of wood at a moisture content; found 40 %; needed a moisture content from 0 to 30 % of the oven-dry weight; wetter boards are weighed, or named as freshly treated',
  ],
  LoadOffTheBeam: [
    { chapter, tag: 'LoadOffTheBeam', load: 'wheel', found: inch(130), limit: inch(120) },
    'asked the load wheel; found 130 in from the left end; needed a place between 0 and 120 in',
  ],
  UndecodableList: [
    { chapter, tag: 'UndecodableList', found: '20', needed: 'a figure of length', path: 'frame.0.length' },
    'frame.0.length: asked a cut list or deck; found 20; needed a figure of length',
  ],
};

describe('errors in words', () => {
  it.each(Object.entries(said))('%s', (_, [error, words]) => expect(describeError(error)).toBe(words));
});
