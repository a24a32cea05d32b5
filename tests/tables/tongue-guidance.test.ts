/** Tongue guidance typed a second time from the reference list (rules, tongue_guidance.csv): percent of the loaded weight, grade of the text. */
import { describe, expect, it } from 'vitest';
import { loadTables } from '../../src/load/index.js';
import type { TongueGuidanceRow } from '../../src/load/data/tongue-guidance.js';
import type { Table } from '../../src/trace/index.js';

const printed = `
10 | 15 | conventional hitch, US and Canada                          | encyclopedia summary                          | C
10 | 15 | ball hitch                                                 | tow-vehicle owner manuals (four makes)        | B
9  | 11 | ball hitch                                                 | tow-vehicle owner manuals (two makes)         | B
10 | 10 | weight-carrying hitch                                      | tow-vehicle owner manuals (1994, 1998)        | B
12 | 12 | weight-distributing hitch                                  | tow-vehicle owner manuals (1994, 1998)        | B
7  | 10 | light open trailers                                        | trailer maker FAQ (name withheld)             | C
20 | 25 | gooseneck and fifth wheel                                  | trailer maker manual (name withheld)          | B
15 | 25 | fifth wheel and gooseneck pin                              | tow-vehicle owner manual                      | B
20 | 20 | fifth-wheel test condition attributed to SAE J2807 by a magazine | truck magazine, 2012                    | B
5  | 7  | European caravans                                          | national trade-body towing guide (GB)         | B
4  | 7  | EU and UK nose weight, never below 25 kg                   | tow-vehicle owner manual (GB, 2019)           | B
6  | 10 | Australian caravans, 7 minimum advised                     | two web pages                                 | C
15 | 15 | SAE J2807 fifth-wheel test condition as commonly quoted; conflicts with 20 | from memory                   | memory
`.trim().split('\n').map((line) => line.split('|').map((cell) => cell.trim()));

const table = loadTables.find(({ name }) => name === 'tongue guidance') as Table<TongueGuidanceRow>;

describe('tongue guidance', () => {
  it('has the listed rows, no more and no less', () => {
    expect(table.rows.map(({ lowPercent, highPercent, appliesTo, from, grade }) => [lowPercent, highPercent, appliesTo, from, grade])).toEqual(printed);
  });
  it('is a band of shares in every row', () => {
    for (const { lowPercent, highPercent } of table.rows) expect([Number(lowPercent) > 0, Number(lowPercent) <= Number(highPercent), Number(highPercent) < 100]).toEqual([true, true, true]);
  });
  it('calls itself guidance', () => expect(table.source.note).toBe('guidance, not law'));
});
