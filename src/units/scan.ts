/** Reading figures character by character: every step moves forward, so the time grows with the length and no more. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { Decimal } from './decimal.js';
import type { UnreadableQuantity } from './errors.js';
import { allUnits, type Unit } from './unit-list.js';

/** The longest text that can be a figure; anything longer is refused unread. */
const longest = 200;

/** A place in a text. */
export interface Cursor {
  readonly text: string;
  readonly at: number;
}

export const unreadable = (cursor: Cursor, needed: string): Either<UnreadableQuantity, never> =>
  left({
    chapter: 'units',
    tag: 'UnreadableQuantity',
    text: cursor.text.slice(0, 60),
    at: cursor.at,
    found: cursor.at >= cursor.text.length ? 'the end' : cursor.text.slice(cursor.at, cursor.at + 12),
    needed,
  });

export function start(text: string): Either<UnreadableQuantity, Cursor> {
  if (text.length > longest) return unreadable({ text, at: longest }, `a figure of at most ${longest} characters`);
  return right(skipSpaces({ text, at: 0 }));
}

export function skipSpaces({ text, at }: Cursor): Cursor {
  let next = at;
  while (text[next] === ' ' || text[next] === '\u00a0' || text[next] === '\t') next += 1;
  return { text, at: next };
}

const isDigit = (character: string | undefined): boolean =>
  character !== undefined && character >= '0' && character <= '9';

export function digitsFrom(cursor: Cursor): string {
  let end = cursor.at;
  while (isDigit(cursor.text[end])) end += 1;
  return cursor.text.slice(cursor.at, end);
}

/** `1150`, `9,200`, `7000.5`, `-12`: commas only between groups of three, one decimal point, no exponent. */
export function scanNumber(cursor: Cursor): Either<UnreadableQuantity, { value: Decimal; next: Cursor }> {
  const { text } = cursor;
  let at = cursor.at;
  const negative = text[at] === '-';
  if (negative || text[at] === '+') at += 1;
  let whole = digitsFrom({ text, at });
  if (whole === '') return unreadable({ text, at }, 'a digit');
  at += whole.length;
  if (text[at] === ',' && whole.startsWith('0'))
    return unreadable({ text, at }, 'no comma after a leading zero; the decimal point is "."');
  if (text[at] === ',' && whole.length > 3) return unreadable({ text, at }, 'commas between groups of three digits');
  while (text[at] === ',') {
    const group = digitsFrom({ text, at: at + 1 });
    if (group.length !== 3) return unreadable({ text, at: at + 1 }, 'a group of three digits after the comma');
    whole += group;
    at += 4;
  }
  let fraction = '';
  if (text[at] === '.') {
    fraction = digitsFrom({ text, at: at + 1 });
    if (fraction === '') return unreadable({ text, at: at + 1 }, 'a digit after the decimal point');
    at += 1 + fraction.length;
  }
  const value = new Decimal(`${negative ? '-' : ''}${whole}${fraction === '' ? '' : `.${fraction}`}`);
  return right({ value, next: { text, at } });
}

const spellings: Readonly<Record<string, Unit>> = {
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  '#': 'lb',
  kilogram: 'kg',
  kilograms: 'kg',
  kgs: 'kg',
  tonne: 't',
  tonnes: 't',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '\u2033': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '\u2032': 'ft',
  mile: 'mi',
  miles: 'mi',
  kpa: 'kPa',
  kph: 'km/h',
  kmh: 'km/h',
  n: 'N',
  kn: 'kN',
  degrees: 'deg',
  degree: 'deg',
  '\u00b0': 'deg',
  percent: '%',
  'lb/in2': 'psi',
  'lbs/ft': 'lb/ft',
  plf: 'lb/ft',
  psf: 'lb/ft2',
  pcf: 'lb/ft3',
  '': 'ratio',
};

const exact: ReadonlyMap<string, Unit> = new Map(allUnits.map((unit) => [unit, unit]));

/** In small letters; of two units that differ in capitals only, the one that stands first in the list. */
const small: ReadonlyMap<string, Unit> = new Map([...allUnits].reverse().map((unit) => [unit.toLowerCase(), unit]));

/** The unit a word means, or nothing. `lb\u00b7in` and `lb*in` are one. */
export function unitNamed(word: string): Unit | undefined {
  const plain = word.includes('\u00b7') ? word.replaceAll('\u00b7', '*') : word;
  const found = exact.get(plain);
  if (found !== undefined) return found;
  const lower = plain.toLowerCase();
  return Object.hasOwn(spellings, lower) ? spellings[lower] : small.get(lower);
}
