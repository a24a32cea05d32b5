/** Designations as they are printed, and what each says or why it is refused: GR-1, GR-2, LT-3, EP, RG-6, EX-5, ST-1 to ST-5 and constructed slips. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Designation, designationNotes, readTireDesignation, showDesignation } from '../../src/tires/index.js';
import { rightOf } from '../helpers/either.js';

/** id|text|outcome|prefix|family|width|aspect|diameter|construction|rim|suffix|load range|read from|ply|single|dual|symbol|fault */
const examples = `
T01|P215/65R15 95H|ok|P|P-metric|215|65||R|15|||||95||H|
T02|P215/65R15XL 95H|ok|P|P-metric|215|65||R|15|XL||||95||H|
T03|215/65R15 96H|ok||Euro-metric|215|65||R|15|||||96||H|
T07|255/40ZR17 (94)|ok-warn||Euro-metric|255|40||ZR|17|||||94|||
T09|195/75R16C 107/105R|ok||Euro commercial (C)|195|75||R|16|C||||107|105|R|
T10|175R14C 99/98R|ok||Euro commercial (C)|175|||R|14|C||||99|98|R|
T11|205/70 R 15C 106/104S|ok||Euro commercial (C)|205|70||R|15|C||||106|104|S|
T13|385/65R22.5 160K (158)|ok-warn||truck/trailer metric|385|65||R|22.5|||||160||K|
T14|315/80 R22.5 156/150L|ok||truck/trailer metric|315|80||R|22.5|||||156|150|L|
T17|LT235/85R16 120/116R E|ok|LT|LT-metric|235|85||R|16||E|printed|10|120|116|R|
T18|LT255/85R16 123/120P E|ok|LT|LT-metric|255|85||R|16||E|printed|10|123|120|P|
T19|LT265/75R16 123P E|ok|LT|LT-metric|265|75||R|16||E|printed|10|123||P|
T20|LT235/75R15 104/101Q 6PR OWL|ok|LT|LT-metric|235|75||R|15||C|from_ply_rating|6|104|101|Q|
T21|LT245/75R16* 120/116N 10PR OWL|ok-warn|LT|LT-metric|245|75||R|16||E|from_ply_rating|10|120|116|N|
T22|31x10.50R15LT|ok||LT-flotation|10.5||31|R|15|LT|||||||
T23|31x10.5 R15 LT|ok||LT-flotation|10.5||31|R|15|LT|||||||
T24|33X10.00R16|ok-warn||LT-flotation|10||33|R|16||||||||
T25|35x12.50R20LT|ok||LT-flotation|12.5||35|R|20|LT|||||||
T26|ST205/75R15|ok|ST|ST-metric|205|75||R|15||||||||
T27|ST225/75R15 Load Range E 117/112N|ok|ST|ST-metric|225|75||R|15||E|printed|10|117|112|N|
T29|ST225/75R15-10PR|ok|ST|ST-metric|225|75||R|15||E|from_ply_rating|10||||
T30|ST235/85R16 LRG|ok|ST|ST-metric|235|85||R|16||G|printed|14||||
T31|ST235/80R16|ok|ST|ST-metric|235|80||R|16||||||||
T32|H78-15ST|ok||ST-letter (obsolete)|H|78||D|15|ST|||||||
T33|4.80/4.00-8|ok||small trailer numeric|4.8|||D|8||||||||
T34|4.80-12|ok||small trailer numeric|4.8|||D|12||||||||
T35|5.30-12|ok||small trailer numeric|5.3|||D|12||||||||
T38|8-14.5MH|ok||mobile home|8|||D|14.5|MH|||||||
T39|7.00-15LT|ok||LT-numeric|7|||D|15|LT|||||||
T40|8.00-16.5/C 100/95|ok||LT-numeric|8|||D|16.5||C|printed|6|100|95||
T42|11R22.5 16PR|ok||truck/trailer numeric|11|||R|22.5||H|from_ply_rating|16||||
T43|10.00-20(F)|ok||truck/trailer numeric|10|||D|20||F|printed|12||||
T44|12-16.5 144 A3 12 PR|ok||industrial numeric|12|||D|16.5||F|from_ply_rating|12|144||A3|
T45|215/75R17.5 135/133J|ok||truck/trailer metric|215|75||R|17.5|||||135|133|J|
T46|215/75R17.5 136/134K|ok||truck/trailer metric|215|75||R|17.5|||||136|134|K|
T48|7.50R16 121/120L|ok||truck/LT numeric radial|7.5|||R|16|||||121|120|L|
T49|10R22.5 144/142M|ok||truck/trailer numeric|10|||R|22.5|||||144|142|M|
T50|315/70R17LT 121/118R|ok-warn||LT-metric (suffix form)|315|70||R|17|LT||||121|118|R|
T51|10-20-F|reject|||||||||||||||AMBIGUOUS_NUMERIC
T52|2235/75R17.5|reject|||||||||||||||WIDTH_OUT_OF_RANGE
T55|ST205/75/15|normalise|ST|ST-metric|205|75||unstated|15||||||||
T58|165/68-8|reject|||||||||||||||UNKNOWN_SIZE
T59|5.30x12|normalise||small trailer numeric|5.3|||unstated|12||||||||
T60|10:00-20|reject|||||||||||||||BAD_DECIMAL_SEPARATOR
T61|ST205/75R|reject|||||||||||||||MISSING_RIM
T62|ST205/R15|reject|||||||||||||||MISSING_ASPECT
T63|ST2O5/75R15|reject|||||||||||||||LETTER_O_IN_NUMBER
T64|ST205/750R15|reject|||||||||||||||ASPECT_OUT_OF_RANGE
T66|ST205/75R15 280M|reject|||||||||||||||LOAD_INDEX_OUT_OF_RANGE
T69|ST225/75R15 LRD 10PR|reject|||||||||||||||LOAD_RANGE_PLY_CONFLICT
T71|LTST225/75R15|reject|||||||||||||||BAD_PREFIX
`.trim().split('\n').map((line) => line.split('|'));

/** The family names of the list in the library's words. */
const families: Record<string, string> = {
  'Euro commercial (C)': 'commercial', 'truck/trailer metric': 'truck metric', 'ST-letter (obsolete)': 'ST-letter', 'small trailer numeric': 'small trailer',
  'truck/trailer numeric': 'truck numeric', 'industrial numeric': 'industrial', 'truck/LT numeric radial': 'truck numeric', 'LT-metric (suffix form)': 'LT-metric',
};
const pascal = (code: string): string => code.toLowerCase().split('_').map((part) => part.slice(0, 1).toUpperCase() + part.slice(1)).join('');
const text = (value: unknown): string => (value === undefined ? '' : String(value));

function parts(d: Designation): string[] {
  const { size } = d;
  const width = size.form === 'letter' ? size.letter : size.width.value.toFixed();
  const aspect = size.form === 'metric' || size.form === 'letter' ? size.aspect?.value.toFixed() : undefined;
  const diameter = size.form === 'diameter and width' ? size.diameter.value.toFixed() : undefined;
  return [d.prefix, d.family, width, text(aspect), text(diameter), size.construction, size.rim.value.toFixed(), d.suffix,
    text(d.range?.letter), text(d.range?.plyRating), text(d.service?.single), text(d.service?.dual), text(d.service?.symbol)];
}

describe('designations', () => {
  it.each(examples)('%s %s is %s', (_id, input = '', outcome, ...rest) => {
    const [prefix, family = '', width, aspect, diameter, construction, rim, suffix, letter, from, ply, single, dual, symbol, code = ''] = rest;
    const read = readTireDesignation(input);
    if (outcome === 'reject') {
      expect(isLeft(read) && read.left).toMatchObject({ tag: 'UnreadableDesignation', fault: pascal(code), text: input });
      return;
    }
    const d = rightOf(read);
    // XL and LT may stand in the list's suffix column; a load version is a part of its own here
    const version = suffix === 'XL' ? 'XL' : undefined;
    expect(parts(d)).toEqual([prefix, families[family] ?? family, width, aspect, diameter, construction, rim, version ? '' : suffix, letter, ply, single, dual, symbol]);
    expect(d.version).toBe(version);
    if (from !== '') expect(d.range?.from).toBe(from === 'printed' ? 'load range' : 'ply rating');
    const notes = designationNotes(d).map(({ tag }) => tag);
    if (outcome === 'ok-warn') expect(notes.length).toBeGreaterThan(0);
    if (outcome === 'normalise') expect(notes).toContain('ConstructionUnstated');
    expect(rightOf(readTireDesignation(showDesignation(d)))).toEqual(d);
  });
  it('keeps the two descriptions of 385/65R22.5 160K (158) apart', () => {
    expect(rightOf(readTireDesignation('385/65R22.5 160K (158)'))).toMatchObject({ service: { single: 160 }, second: { single: 158 } });
  });
});
