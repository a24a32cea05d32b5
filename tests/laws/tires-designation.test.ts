/** Reading designations: what is shown reads as the same, and no text costs more than its length or gets through as an exception. */

import fc from 'fast-check';
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import { designationNotes, readTireDesignation, showDesignation } from '../../src/tires/index.js';
import { rightOf } from '../helpers/either.js';

const of = (...texts: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...texts);
const maybe = (part: fc.Arbitrary<string>): fc.Arbitrary<string> => fc.oneof(of(''), part);
const join = (...parts: readonly fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc.tuple(...parts).map((texts) => texts.join(''));

const metric = join(
  of('', 'P', 'LT', 'ST', 'T', 'S'),
  of('145', '175', '225', '385'),
  of('/65', '/75', '/80'),
  of('R', 'D', 'B', 'ZR', '-', '/', ' R '),
  of('12', '15', '16', '22.5'),
);
const full = join(of('155', '175', '195'), of('R'), of('13', '14'), maybe(of('C')));
const diameter = join(
  maybe(of('LT')),
  of('20.5', '31', '33', '35'),
  of('x', 'X'),
  of('8.0', '10.50', '12.5'),
  of('R', '-'),
  of('10', '15', '20'),
  maybe(of('LT')),
);
const numeric = join(
  of('4.80', '7.50', '8', '11', '12', '10.00'),
  maybe(of('/4.00')),
  of('-', 'R', 'x'),
  of('8', '12', '14.5', '16', '16.5', '22.5'),
  maybe(of('LT', 'MH', 'ST')),
);
const letter = join(of('B', 'F', 'H', 'HR'), of('78'), of('-'), of('14', '15'), of('ST', ''));
const service = join(
  of(' '),
  fc.integer({ min: 100, max: 200 }).map(String),
  maybe(of('/98', '/100')),
  maybe(of('L', 'A3', 'Q', 'N', 'Y')),
  maybe(of(' (98)', ' (99/98M)')),
);
const bracketed = of(' (94)', ' (94Y)');
const range = of(' LRD', ' Load Range E', ' 10PR', ' 8-ply', ' (F)', ' LR-G', ' LRE 10PR');
const tail = of(' XL', ' SL', ' OWL', ' *', ' M+S', ' TL FRT', ' XL OWL *');
const anyDesignation = join(
  fc.oneof(metric, full, diameter, numeric, letter),
  maybe(fc.oneof(service, bracketed)),
  maybe(range),
  maybe(tail),
);

describe('designation laws', () => {
  it('read(show(d)) is d, and shows and notes the same', () => {
    let read = 0;
    fc.assert(
      fc.property(anyDesignation, (text) => {
        const first = readTireDesignation(text);
        if (isLeft(first)) return;
        read += 1;
        const shown = showDesignation(first.right);
        const again = rightOf(readTireDesignation(shown));
        expect(again, `${text} -> ${shown}`).toEqual(first.right);
        expect(showDesignation(again)).toBe(shown);
        expect(designationNotes(again)).toEqual(designationNotes(first.right));
      }),
      { numRuns: 3000 },
    );
    expect(read).toBeGreaterThan(1500);
  });
  it('reads small letters and wide spacing as the same tire', () => {
    const plain = rightOf(readTireDesignation('ST225/75R15 113/108L LRD'));
    for (const text of [
      'st225/75r15 113/108l lrd',
      '  ST 225/75 R 15  113/108L, Load Range D ',
      'ST225/75R15 LRD 113/108L',
      'ST225/75R15/D 113/108L',
    ]) {
      expect(rightOf(readTireDesignation(text)), text).toEqual(plain);
    }
  });
  it('answers any text with parts or with a fault inside the text, in words', () => {
    const near = fc
      .array(
        of(
          'ST',
          '2',
          '25',
          '/',
          '75',
          'R',
          '15',
          ' ',
          'L',
          'D',
          '(',
          ')',
          '*',
          '-',
          'x',
          '.',
          'O',
          'PR',
          'A3',
          ':',
          '\u{1f6de}',
          '__proto__',
          '0',
        ),
        { maxLength: 30 },
      )
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(near, fc.string({ maxLength: 200 })), (text) => {
        const read = readTireDesignation(text);
        if (isRight(read)) return;
        expect(read.left.at).toBeGreaterThanOrEqual(0);
        expect(read.left.at).toBeLessThanOrEqual(text.length);
        expect(describeError(read.left)).toMatch(/^the [a-z ]+ in the tire designation "/);
      }),
      { numRuns: 3000 },
    );
  });
  it('refuses long texts unread: a million characters give the same small error as eighty-one', () => {
    for (const unit of ['1', '/', ' ', '(', '225/', 'ST', '*', '-', 'O', '1.']) {
      const long = readTireDesignation(unit.repeat(1_000_000));
      const short = readTireDesignation(unit.repeat(81));
      expect(isLeft(long) && long.left).toMatchObject({ fault: 'TooLong', at: 80 });
      expect(JSON.stringify(isLeft(long) && long.left).length).toBeLessThan(400);
      expect(isLeft(short) && short.left.fault).toBe('TooLong');
    }
  });
  it('looks at no character more than a few times', () => {
    for (const text of [
      'ST225/75R15 113/108L LRD',
      `ST225/75R15${'*'.repeat(60)}`,
      `ST225/75R15${' '.repeat(69)}`,
      `225${'/'.repeat(70)}`,
      `(${'1'.repeat(70)}`,
      `${'1'.repeat(80)}`,
      `ST225/75R15 100${' '.repeat(60)}X`,
    ]) {
      let looks = 0;
      const counted = new Proxy(Object(text) as object, {
        get: (target, key) => {
          const value: unknown = Reflect.get(target, key);
          if (key === 'charCodeAt')
            return (at: number) => {
              looks += 1;
              return text.charCodeAt(at);
            };
          return typeof value === 'function' ? (value as () => unknown).bind(target) : value;
        },
      });
      readTireDesignation(counted as unknown as string);
      expect(looks, text).toBeLessThan(12 * text.length + 40);
    }
  });
});
