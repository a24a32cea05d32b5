/** The words people write for units, and the words that are refused because they mean several things. */
import type { Decimal } from './decimal.js';
import { showNumber } from './show.js';
import { allUnits, type Unit } from './unit-list.js';

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
  '\u201c': 'in',
  '\u201d': 'in',
  "''": 'in',
  '\u2032\u2032': 'in',
  '\u2018\u2018': 'in',
  '\u2019\u2019': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '\u2032': 'ft',
  '\u2018': 'ft',
  '\u2019': 'ft',
  mile: 'mi',
  miles: 'mi',
  psig: 'psi',
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

/** In small letters; of two units that differ in capitals only, the one first in the list. */
const small: ReadonlyMap<string, Unit> = new Map([...allUnits].reverse().map((unit) => [unit.toLowerCase(), unit]));

/** A word in the form of the lists: without one stop after the letters, a raised dot as a star. */
function plainWord(word: string): string {
  const stopped = /[a-zA-Z]\.$/.test(word) ? word.slice(0, -1) : word;
  return stopped.includes('\u00b7') ? stopped.replaceAll('\u00b7', '*') : stopped;
}

/** The unit a word means, or undefined. `lb\u00b7in` and `lb*in` are one; a capital `T` is no tonne. */
export function unitNamed(word: string): Unit | undefined {
  const plain = plainWord(word);
  const found = exact.get(plain);
  if (found !== undefined) return found;
  if (plain === 'T') return undefined;
  const lower = plain.toLowerCase();
  return Object.hasOwn(spellings, lower) ? spellings[lower] : small.get(lower);
}

/** What to write instead of a word that means several units; undefined for any other word. */
export function insteadOf(word: string, number: Decimal): string | undefined {
  const plain = plainWord(word);
  const pounds = (each: number): string => `"${showNumber(number.times(each))} lb"`;
  if (plain === 'T' || /^(?:[a-z]+ )?tons?$/i.test(plain))
    return `a word that says which ton: "${showNumber(number)} t" for tonnes of 1,000 kg, or pounds, ${pounds(2000)} for short tons`;
  if (/^k(?: ?lbs?)?$/i.test(plain))
    return `the thousands written out with a unit, such as ${pounds(1000)}: K has more than one meaning`;
  return undefined;
}
