/** Every form in which people write figures, and every text that is refused because it has two meanings, with its words. */
import fc from 'fast-check';
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { wordsFor } from '../../../src/errors.js';
import {
  allUnits,
  dimensionOf,
  parseAny,
  parseLength,
  parseMeasure,
  quantity,
  show,
  wireQuantity,
} from '../../../src/units/index.js';
import { decimals } from '../../helpers/arbitraries.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const inches = (text: string): string => show(rightOf(parseLength(text, 'in')));
const figure = (text: string): string => show(rightOf(parseAny(text)));

describe('lengths as people write them', () => {
  it.each([
    // curly quotes, primes, two apostrophes
    ['16\u2019 6\u201d', '198 in'],
    ['16\u2018 6\u201c', '198 in'],
    ['6\u201d', '6 in'],
    [`16' 6''`, '198 in'],
    [`16'6''`, '198 in'],
    [`6 1/2''`, '6.5 in'],
    ['16\u20196\u2019\u2019', '198 in'],
    ['16\u20326\u2032\u2032', '198 in'],
    // a dash between feet and inches, and before a fraction
    [`16'-6 1/2"`, '198.5 in'],
    [`16'-6-1/2"`, '198.5 in'],
    [`16' - 6"`, '198 in'],
    [`16'- 6"`, '198 in'],
    [`16'\u20136"`, '198 in'],
    [`16'-0"`, '192 in'],
    ['16 ft - 6 in', '198 in'],
    ['16ft-6in', '198 in'],
    [`-16'-6"`, '-198 in'],
    [`6-1/2"`, '6.5 in'],
    [`-6-1/2"`, '-6.5 in'],
    [`6\u20111/2"`, '6.5 in'],
    // a point before the first digit
    ['.5 in', '0.5 in'],
    ['-.5 in', '-0.5 in'],
    [`5' .5"`, '60.5 in'],
    // a stop behind the unit
    ['16 ft.', '192 in'],
    ['6 in.', '6 in'],
    ['16 ft. 6 in.', '198 in'],
    ['16ft.-6 in.', '198 in'],
    ['16 Ft. 6 In.', '198 in'],
    // the minus of print
    ['\u221212 in', '-12 in'],
    [`\u22120' 6"`, '-6 in'],
    // fractions of one character, and the slash of print
    ['6\u00bd"', '6.5 in'],
    ['6 \u00bd"', '6.5 in'],
    ['6-\u00bd"', '6.5 in'],
    ['\u00bd in', '0.5 in'],
    ['-\u00bd in', '-0.5 in'],
    ['\u22126\u00bc in', '-6.25 in'],
    [`16' 6\u215e"`, '198.875 in'],
    [`16'-\u00be"`, '192.75 in'],
    ['16\u00bd ft', '198 in'],
    ['\u2153 ft', '4 in'],
    ['6 1\u20442 in', '6.5 in'],
    // spaces between groups of three, and none of it taken for a fraction
    ['12 192 mm', '480 in'],
    ['1 016 1/2 in', '1,016.5 in'],
  ])('%s is %s', (text, result) => expect(inches(text)).toBe(result));

  it('reads every fraction of one character', () => {
    const read = [
      ...'\u00bd\u2153\u2154\u00bc\u00be\u2155\u2156\u2157\u2158\u2159\u215a\u2150\u215b\u215c\u215d\u215e\u2151\u2152',
    ];
    // The Unicode standard gives each its compatibility form: top, U+2044, bottom.
    for (const each of read) {
      const [top, bottom] = each.normalize('NFKC').split('\u2044').map(Number) as [number, number];
      for (const [text, size] of [
        [`${each} lb`, top / bottom],
        [`3${each} lb`, 3 + top / bottom],
      ] as const)
        expect(rightOf(parseAny(text)).value.toNumber()).toBeCloseTo(size, 14);
    }
  });
});

describe('other figures as people write them', () => {
  it.each([
    ['1 150 kg', '1,150 kg'],
    ['1\u00a0150 kg', '1,150 kg'],
    ['1\u202f150\u202fkg', '1,150 kg'],
    ['1\u2009150.5\u2009kg', '1,150.5 kg'],
    ['10 000 000 lb', '10,000,000 lb'],
    ['\u22121 150 kg', '-1,150 kg'],
    ['\u221212 lb', '-12 lb'],
    ['.5 t', '0.5 t'],
    ['+.5 t', '0.5 t'],
    ['9,200 lbs.', '9,200 lb'],
    ['9,200 lb.', '9,200 lb'],
    ['9,200 Lbs.', '9,200 lb'],
    ['2 200 lbs/ft.', '2,200 lb/ft'],
    ['80 psig', '80 psi'],
    ['80 PSIG', '80 psi'],
    ['12\u00bd %', '12.5 %'],
    ['2 \u00bd t', '2.5 t'],
    ['7 t', '7 t'],
    ['5 kip', '5 kip'],
    ['36 ksi', '36 ksi'],
  ])('%s is %s', (text, result) => expect(figure(text)).toBe(result));
});

describe('refused, with words that say why', () => {
  it.each([
    // text, where the finger points (counted from 0), and what is needed
    ['31/2"', 0, 'one meaning: is it 3 1/2 or 31/2? Write a space before the fraction, or 15 1/2'],
    ['-31/2 in', 1, 'one meaning: is it 3 1/2 or 31/2? Write a space before the fraction, or 15 1/2'],
    [`16' 61/2"`, 4, 'one meaning: is it 6 1/2 or 61/2? Write a space before the fraction, or 30 1/2'],
    ['13/8 in', 0, 'one meaning: is it 1 3/8 or 13/8? Write a space before the fraction, or 1 5/8'],
    ['129/64 in', 0, 'one meaning: is it 12 9/64, 1 29/64 or 129/64? Write a space before the fraction, or 2 1/64'],
    ['7 T', 2, 'a word that says which ton: "7 t" for tonnes of 1,000 kg, or pounds, "14,000 lb" for short tons'],
    ['1,127/64"', 0, expect.stringContaining('one meaning: is it 112 7/64, 11 27/64 or 1127/64?')],
    ['5.5 1/2 in', 5, 'whole numbers around a fraction'],
    ['5.5\u00bd in', 3, 'a whole number before a fraction'],
    [`16' -6"`, 4, 'inches without a sign'],
    [`16'--6"`, 4, 'inches without a sign'],
    [`16.5'-6"`, 5, 'nothing after feet with a fraction'],
    ['5ft.5in', 4, 'a space after the stop'],
    [`6 - 1/2"`, 2, 'a unit of length, such as in, ft, mm'],
    ['6-1 in', 1, 'a unit of length, such as in, ft, mm'],
    ['6 127/64 in', 5, 'a fraction below one after the whole number'],
  ])('the length %s at %i', (text, at, needed) => {
    expect(leftOf(parseLength(text, 'in'))).toMatchObject({ tag: 'UnreadableQuantity', at, needed });
  });

  it.each([
    ['7T', 1, 'a word that says which ton: "7 t" for tonnes of 1,000 kg, or pounds, "14,000 lb" for short tons'],
    ['7 tons', 2, 'a word that says which ton: "7 t" for tonnes of 1,000 kg, or pounds, "14,000 lb" for short tons'],
    ['3.5 TON', 4, 'a word that says which ton: "3.5 t" for tonnes of 1,000 kg, or pounds, "7,000 lb" for short tons'],
    ['7 short tons', 2, expect.stringContaining('which ton')],
    ['7K', 1, 'the thousands written out with a unit, such as "7,000 lb": K has more than one meaning'],
    ['7.5 k', 4, 'the thousands written out with a unit, such as "7,500 lb": K has more than one meaning'],
    ['7Klb', 1, expect.stringContaining('"7,000 lb"')],
    ['7K lbs.', 1, expect.stringContaining('"7,000 lb"')],
    ['12 1/2 %', 3, 'a decimal, such as 12.5: fractions with a slash are read in lengths only'],
    ['60/32 psi', 2, 'a decimal, such as 12.5: fractions with a slash are read in lengths only'],
    ['10 00 lb', 3, 'a group of three digits after the space'],
    ['10 0000 lb', 3, 'a group of three digits after the space'],
    ['1000 000 lb', 4, 'spaces between groups of three digits'],
    ['0 123 lb', 1, 'spaces between groups of three digits'],
    ['1,150 000 kg', 5, 'one mark between all groups of three digits'],
    ['1 150,000 kg', 5, 'one mark between all groups of three digits'],
    ['1  150 kg', 3, 'a unit this library knows, such as lb, kg, in, ft, psi'],
    ['12 lb..', 3, 'a unit this library knows, such as lb, kg, in, ft, psi'],
    ['12 .', 3, 'a unit this library knows, such as lb, kg, in, ft, psi'],
    ['- 5 lb', 1, 'a digit'],
    ['\u2212\u22125 lb', 1, 'a digit'],
    ['-.lb', 1, 'a digit'],
  ])('%s at %i', (text, at, needed) => {
    expect(leftOf(parseAny(text))).toMatchObject({ tag: 'UnreadableQuantity', at, needed });
  });

  it('says of another kind of unit what it measures', () => {
    expect(wordsFor(leftOf(parseMeasure('15 lb', 'length')))).toBe(
      'the figure is in lb; write a unit of length; lb is a unit of weight',
    );
    expect(wordsFor(leftOf(parseMeasure('15 lb/ft', 'length')))).toContain('lb/ft is a unit of weight per length');
    expect(wordsFor(leftOf(parseMeasure('15', 'length')))).toContain('write a unit of length');
  });
});

describe('laws of reading', () => {
  it.each(allUnits)('parse(show(q)) is q in %s: by its unit, by its dimension, and as a record', (unit) => {
    const dimension = dimensionOf(unit);
    fc.assert(
      fc.property(decimals, (digits) => {
        const q = quantity(digits, unit);
        const wire = wireQuantity(dimension);
        const reads = [parseAny(show(q)), parseMeasure(show(q), dimension), wire.decode(wire.encode(q as never))];
        for (const read of reads)
          expect(isRight(read) && read.right.unit === unit && read.right.value.eq(q.value)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
  it('reads groups with any space as it reads them with commas', () => {
    fc.assert(
      fc.property(decimals, fc.constantFrom(' ', '\u00a0', '\u202f', '\u2009'), (digits, space) => {
        const q = quantity(digits, 'lb');
        const text = show(q).replaceAll(',', space).replace('-', '\u2212');
        expect(figure(text)).toBe(show(q));
      }),
    );
  });
  it('takes time in proportion to the text: a long hostile text is refused at once', () => {
    const begun = performance.now();
    for (const filler of [
      '9',
      '9 ',
      '1 000 ',
      '1,',
      '-',
      '\u2212',
      '.',
      `'`,
      `5' `,
      '\u00bd',
      '6\u00bd',
      '1/2 ',
      '31/',
      ' \u2009',
      'T',
      'K',
      'lb.',
      '.5',
    ])
      for (const size of [150, 200, 2_000_000]) {
        const text = filler.repeat(Math.ceil(size / filler.length)).slice(0, size);
        for (const read of [
          parseAny(text),
          parseAny(`${text} lb`),
          parseLength(text, 'in'),
          parseMeasure(text, 'mass'),
        ])
          if (isLeft(read)) expect(JSON.stringify(read).length).toBeLessThan(900);
      }
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});
