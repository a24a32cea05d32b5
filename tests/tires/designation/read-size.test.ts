/** The limits within which a size is read, at their edges, and what is said outside them. */
import { describe, expect, it } from 'vitest';
import { readTireDesignation, showDesignation } from '../../../src/tires/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('a size is read at the edge of its limits and refused a step outside', () => {
  it.each([
    ['width in mm, least', '100/80R16', '99/80R16', 'WidthOutOfRange'],
    ['width in mm, greatest', '650/80R16', '651/80R16', 'WidthOutOfRange'],
    ['aspect, least', '205/20R15', '205/15R15', 'AspectOutOfRange'],
    ['aspect, greatest', '205/100R15', '205/101R15', 'AspectOutOfRange'],
    ['aspect, in fives', '205/75R15', '205/76R15', 'UnknownSize'],
    ['width in inches, least', '3-12', '2.99-12', 'WidthOutOfRange'],
    ['width in inches, greatest', '40-12', '40.5-12', 'WidthOutOfRange'],
    ['diameter, least', '10x3-4', '9x3-4', 'DiameterOutOfRange'],
    ['diameter, greatest', '60.0x20-25', '60.5x20-25', 'DiameterOutOfRange'],
    ['rim, least', '4.80-3', '4.80-2.5', 'RimOutOfRange'],
    ['rim, greatest', '4.80-30', '4.80-30.5', 'RimOutOfRange'],
    ['rim, in halves', '4.80-14.5', '4.80-14.25', 'RimOutOfRange'],
    ['decimals of a width', '4.80-12', '4.805-12', 'WidthOutOfRange'],
    ['load index', '175R14C 200/200R', '175R14C 201R', 'LoadIndexOutOfRange'],
  ])('%s: %s, not %s', (_, inside, outside, fault) => {
    rightOf(readTireDesignation(inside));
    expect(leftOf(readTireDesignation(outside))).toMatchObject({ fault });
  });
  it('a letter O beside digits is no zero, before or behind them', () => {
    for (const text of ['ST225/O5R15', 'ST225/7OR15', 'STO225/75R15'])
      expect(readTireDesignation(text)).toMatchObject({ _tag: 'Left' });
    expect(leftOf(readTireDesignation('ST225/O5R15'))).toMatchObject({ fault: 'LetterOInNumber', at: 6 });
    expect(leftOf(readTireDesignation('ST225/7OR15'))).toMatchObject({ fault: 'LetterOInNumber', at: 7 });
  });
});

describe('a sidewall style behind a number', () => {
  it('is told from a letter O written for a zero', () => {
    for (const style of ['OWL', 'OBL'])
      expect(rightOf(readTireDesignation(`LT235/85R16${style}`)).setAside, style).toEqual([style]);
    for (const style of ['OLW', 'OLB', 'O', 'OR'])
      expect(leftOf(readTireDesignation(`LT235/85R16${style}`)), style).toMatchObject({ fault: 'LetterOInNumber' });
  });
});

describe('the words of a refusal', () => {
  it('tell a rim that is missing from a construction that is', () => {
    expect(leftOf(readTireDesignation('ST225/75'))).toMatchObject({ fault: 'MissingRim', part: 'construction' });
    expect(leftOf(readTireDesignation('ST225/75Q15'))).toMatchObject({
      fault: 'MissingConstruction',
      part: 'construction',
    });
  });
  it('show the next twelve characters, or say that the text ended', () => {
    expect(leftOf(readTireDesignation('ST225/75R15 LRD and more text'))).toMatchObject({
      at: 16,
      found: '"and more tex"',
    });
    expect(leftOf(readTireDesignation('ST225/75'))).toMatchObject({ at: 8, found: 'the end' });
  });
});

describe('the construction', () => {
  it.each([
    ['23x8.50B12', 'B'],
    ['7.50B16', 'B'],
    ['31x10.50D15', 'D'],
    ['7.50D16', 'D'],
    ['175ZR14', 'ZR'],
    ['175zr14', 'ZR'],
    ['7.50d16', 'D'],
    ['255/40ZR17', 'ZR'],
    ['ST205/75/15', 'unstated'],
  ])('of %s is %s', (text, construction) => {
    expect(rightOf(readTireDesignation(text)).size.construction).toBe(construction);
  });
  it('of a size without aspect or letters in front is R or ZR', () => {
    expect(leftOf(readTireDesignation('175-14'))).toMatchObject({ fault: 'MissingAspect', at: 3 });
    expect(leftOf(readTireDesignation('ST175R14'))).toMatchObject({ fault: 'MissingAspect', at: 5 });
  });
  it('of a bias tire is shown with a D behind a prefix, with a hyphen without one', () => {
    const shown = (text: string): string => showDesignation(rightOf(readTireDesignation(text)));
    expect(['ST175/80D13', 'ST175/80-13', '175/80-13', '175/80D13'].map(shown)).toEqual([
      'ST175/80D13',
      'ST175/80D13',
      '175/80-13',
      '175/80-13',
    ]);
  });
  it('does not begin with a point that has no digit behind it', () => {
    expect(leftOf(readTireDesignation('4.-8'))).toMatchObject({ fault: 'MissingConstruction', at: 1 });
    expect(leftOf(readTireDesignation('4.80-8.'))).toMatchObject({ fault: 'UnexpectedText', at: 6 });
  });
  it('is no Z without its R', () => {
    expect(leftOf(readTireDesignation('255/40Z17'))).toMatchObject({ fault: 'MissingConstruction', at: 6 });
  });
  it('C behind a metric size is the commercial suffix of a radial, a load range of any other', () => {
    expect(rightOf(readTireDesignation('195/75R14C'))).toMatchObject({ family: 'commercial', suffix: 'C' });
    expect(rightOf(readTireDesignation('255/40ZR17C'))).toMatchObject({ family: 'commercial', suffix: 'C' });
    expect(rightOf(readTireDesignation('195/75-14 C'))).toMatchObject({ suffix: '', range: { letter: 'C' } });
  });
});

describe('the letter of a size', () => {
  it('is A to N, with an R for radial', () => {
    for (const text of ['A78-13', 'N78-15', 'NR78-15', 'AR78-13'])
      expect(rightOf(readTireDesignation(text)).size.form, text).toBe('letter');
    for (const text of ['O78-15', 'OR78-15', 'Z78-15', 'HH78-15', 'HRR78-15'])
      expect(leftOf(readTireDesignation(text)), text).toMatchObject({ fault: 'BadPrefix', at: 0 });
  });
});

describe('between the parts', () => {
  it('may stand blanks, tabs and the blank that does not break, no new line', () => {
    for (const text of ['ST225/75R15 LRD', 'ST225/75R15\tLRD', 'ST225/75R15\u00a0LRD', '  ST 225/75 R 15  LR D'])
      expect(rightOf(readTireDesignation(text)).range?.letter, text).toBe('D');
    expect(leftOf(readTireDesignation('ST225/75R15\nLRD'))).toMatchObject({ fault: 'UnexpectedText', at: 11 });
  });
  it.each(['@', '[', '`', '{', ':', ';'])('the sign %s is no letter and no digit', (sign) => {
    expect(leftOf(readTireDesignation(`ST225/75R15 ${sign}`))).toMatchObject({
      needed: 'a service description, a load range or the end',
    });
  });
});

describe('the family of a size without letters', () => {
  it.each([
    ['23x8.50-12', 'small trailer'],
    ['18x8.5-8', 'small trailer'],
    ['23x8.50R12', 'LT-flotation'],
    ['31x10.5-13', 'LT-flotation'],
  ])('%s is %s', (text, family) => {
    expect(rightOf(readTireDesignation(text)).family).toBe(family);
  });
  it('a numeric width is shown with two decimals, a whole one whole', () => {
    expect(
      ['5.3-12', '4.8-8', '8-14.5MH', '12-16.5', '07.50-16', '07.5-16'].map((text) =>
        showDesignation(rightOf(readTireDesignation(text))),
      ),
    ).toEqual(['5.30-12', '4.80-8', '8-14.5MH', '12-16.5', '7.50-16', '7.50-16']);
  });
});
