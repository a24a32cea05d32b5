/** Figures as people write them, where exactly the error points, and text that means harm. */
import fc from 'fast-check';
import { type Either, isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import {
  allUnits,
  inch,
  parseAny,
  parseLength,
  parseMeasure,
  parseQuantity,
  type Quantity,
  quantity,
  show,
  showFeetInches,
  type Unit,
  type UnitsError,
} from '../../../src/units/index.js';
import { decimals } from '../../helpers/arbitraries.js';

const shown = <U extends Unit>(read: Either<UnitsError, Quantity<U>>): string =>
  isRight(read) ? show(read.right) : describeError(read.left);

describe('reading figures', () => {
  it.each([
    ['10,000 lb', 'lb', '10,000 lb'],
    ['10000 lb', 'lb', '10,000 lb'],
    ['  7000.5 lbs ', 'lb', '7,000.5 lb'],
    ['9,200 POUNDS', 'lb', '9,200 lb'],
    ['2540#', 'lb', '2,540 lb'],
    ['1150 kg', 'kg', '1,150 kg'],
    ['1150kg', 'kg', '1,150 kg'],
    ['65 psi', 'psi', '65 psi'],
    ['450 kPa', 'kPa', '450 kPa'],
    ['-12 lb', 'lb', '-12 lb'],
    ['+12 lb', 'lb', '12 lb'],
    ['12 %', '%', '12 %'],
    ['15 percent', '%', '15 %'],
    ['0.15', 'ratio', '0.15'],
    ['62 mph', 'mph', '62 mph'],
    ['100 km/h', 'km/h', '100 km/h'],
    ['6.7 lb/ft', 'lb/ft', '6.7 lb/ft'],
    ['6.7 plf', 'lb/ft', '6.7 lb/ft'],
    ['5 lb\u00b7in', 'lb*in', '5 lb\u00b7in'],
    ['7\u00b0', 'deg', '7 deg'],
    ['3\u00a0t', 't', '3 t'],
  ] as const)('%s', (text, unit, result) => expect(shown(parseQuantity(text, unit))).toBe(result));

  it.each([
    [`16' 6 1/2"`, '198.5 in'],
    ['5 ft 6 in', '66 in'],
    [`66 1/2"`, '66.5 in'],
    [`16'`, '192 in'],
    ['20 ft', '240 in'],
    [`1/2"`, '0.5 in'],
    ['3/2 in', '1.5 in'],
    [`-5' 6"`, '-66 in'],
    [`-0' 6"`, '-6 in'],
    [`5'6"`, '66 in'],
    ['5\u2032 6\u2033', '66 in'],
    ['25.4 mm', '1 in'],
    ['1 m', '39.37007874015748031496062992125984 in'],
    [`8' 11 63/64"`, '107.984375 in'],
  ])('the length %s', (text, result) => expect(shown(parseLength(text, 'in'))).toBe(result));

  it.each([
    // text, where the finger points (counted from 0), what stands there
    ['', 0, 'the end'],
    ['   ', 3, 'the end'],
    ['lb', 0, 'lb'],
    ['. lb', 0, '. lb'],
    ['1. lb', 2, ' lb'],
    ['10,00 lb', 3, '00 lb'],
    ['1000,000 lb', 4, ',000 lb'],
    ['10,0000 lb', 3, '0000 lb'],
    ['0,123 lb', 1, ',123 lb'],
    ['12 stones', 3, 'stones'],
    ['12 lb lb', 3, 'lb lb'],
    ['1e5 lb', 1, 'e5 lb'],
    ['0x10 lb', 1, 'x10 lb'],
    ['NaN lb', 0, 'NaN lb'],
    ['Infinity lb', 0, 'Infinity lb'],
    ['--5 lb', 1, '-5 lb'],
    ['5 __proto__', 2, '__proto__'],
    ['5 constructor', 2, 'constructor'],
    ['\uff15 lb', 0, '\uff15 lb'],
    ['5\u200b lb', 1, '\u200b lb'],
    ['12 \u65e5\u672c', 3, '\u65e5\u672c'],
  ] as const)('points at the character: "%s" at %i', (text, at, found) => {
    const read = parseAny(text);
    expect(isLeft(read) && [read.left.tag, read.left.at, read.left.found]).toEqual(['UnreadableQuantity', at, found]);
  });

  it.each([
    ['66', 2, 'the end'],
    [`5' 12"`, 3, '12"'],
    [`5' -6"`, 3, '-6"'],
    [`5' 6`, 4, 'the end'],
    [`5' 6'`, 4, `'`],
    [`5.5' 6"`, 5, '6"'],
    [`6" 5'`, 3, `5'`],
    [`6 1/3"`, 4, '3"'],
    ['6 1/0 in', 4, '0 in'],
    [`6 9/8"`, 3, '/8"'],
    ['1.5 1/2 in', 5, '/2 in'],
    [`5' 6" tall`, 6, 'tall'],
    [`5' 6''tall`, 6, 'tall'],
    [`5' 6'' tall`, 7, 'tall'],
    ['5 ft 6 inches tall', 14, 'tall'],
    ['16 1/2', 6, 'the end'],
  ] as const)('points at the character of a length: "%s" at %i', (text, at, found) => {
    const read = parseLength(text, 'in');
    expect(isLeft(read) && read.left).toMatchObject({ tag: 'UnreadableQuantity', at, found });
  });

  it('never takes kilograms for pounds, nor a bare number for a weight', () => {
    expect(shown(parseQuantity('1150 kg', 'lb'))).toBe(
      'the figure is in kg; write the same figure in lb, converted by name',
    );
    expect(shown(parseQuantity('9200', 'lb'))).toBe('the figure has no unit; write a unit of weight behind the figure');
    expect(shown(parseLength('5 psi', 'in'))).toBe(
      'the figure is in psi; write a unit of length; psi is a unit of pressure',
    );
    expect(shown(parseMeasure('20 ft', 'mass'))).toBe(
      'the figure is in ft; write a unit of weight; ft is a unit of length',
    );
  });

  it('refuses a megabyte unread: at its two hundredth character, with a short error', () => {
    for (const filler of ['9', ' ', '1,', "5' ", '(', '\u{1f69b}']) {
      const text = filler.repeat(1_000_000 / filler.length);
      for (const read of [parseAny(text), parseLength(text, 'in'), parseMeasure(text, 'mass')]) {
        expect(isLeft(read) && read.left).toMatchObject({
          tag: 'UnreadableQuantity',
          at: 200,
          needed: 'a figure of at most 200 characters',
        });
        expect(JSON.stringify(read).length).toBeLessThan(600);
      }
    }
  });

  it('reads two hundred characters, and tells back no more than sixty of them', () => {
    const text = (length: number) => `${' '.repeat(length - 4)}5 lb`;
    expect(shown(parseQuantity(text(200), 'lb'))).toBe('5 lb');
    const refused = parseAny(text(201));
    expect(isLeft(refused) && refused.left).toMatchObject({ at: 200, text: text(201).slice(0, 60) });
    const stones = parseAny(`12 ${'stones '.repeat(20)}`);
    expect(isLeft(stones) && [stones.left.text.length, stones.left.found]).toEqual([60, 'stones stone']);
  });
  it('answers any text whatever without an exception, and what it reads it prints and reads again', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom(...`0123456789.,-+/'" ftinlbkg%#e`) }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        for (const read of [parseAny(text), parseMeasure(text, 'length')]) {
          if (isLeft(read))
            expect(describeError(read.left)).toMatch(/^(?:".*" cannot be read: .+|the figure .+); write .+/s);
          else expect(show(read.right)).not.toMatch(/NaN|Infinity|undefined/);
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('parse(show(q)) is q', () => {
  it.each(allUnits)('in %s', (unit) => {
    fc.assert(
      fc.property(decimals, (digits) => {
        const q = quantity(digits, unit);
        const read = parseQuantity(show(q), unit);
        expect(isRight(read) && read.right.value.eq(q.value)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });
  it('in feet and inches, for every sixty-fourth', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (parts) => {
        const q = inch(parts / 64);
        expect(shown(parseLength(showFeetInches(q, 64), 'in'))).toBe(show(q));
      }),
      { numRuns: 1000 },
    );
  });
});
