import type { KeyRows } from '../key-row.js';

export const frameKeys = [
  { type: 'LengthwiseLine', about: 'Pieces that run lengthwise; the key `from` without `spacing` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'rails', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '20 ft', ''],
    ['count', 'how many pieces', 'drawing', 2, ''],
    ['from', 'where their front end stands', 'drawing', '48 in', ''],
  ] },
  { type: 'PlacedLine', about: 'Pieces at one place; the key `at` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'header', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '83 in', ''],
    ['count', 'how many pieces', 'drawing', 1, ''],
    ['at', 'where they stand', 'drawing', '49 in', ''],
  ] },
  { type: 'SpacedLine', about: 'Pieces at a spacing; the key `spacing` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'crossmembers', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '83 in', ''],
    ['spacing', 'from one to the next', 'drawing', '16 in', ''],
    ['over', 'the length they are spread over', 'drawing', '20 ft', ''],
    ['from', 'where the first of them may stand', 'drawing', '62 in', ''],
    ['rule', 'how a spacing becomes a number of pieces', 'drawing', 'first at the start', ''],
  ] },
  { type: 'WeighedLine', about: 'What was weighed; the key `weight` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'coupler', ''],
    ['weight', 'what it weighs', 'scale or sheet', '35 lb', ''],
    ['at', 'where its middle stands', 'drawing', '4 in', ''],
  ] },
] as const satisfies readonly KeyRows[];
