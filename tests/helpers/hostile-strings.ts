/** Strings that nobody should send to a parser and somebody will: broken figures, other alphabets, control marks, long runs. */
import type { Chance } from './random/chance.js';

const units = [
  'lb',
  'kg',
  't',
  'in',
  'ft',
  'mm',
  'm',
  'psi',
  'kPa',
  '%',
  'deg',
  'lb/in',
  'lbs.',
  'tons',
  'stone',
  '"',
  "'",
  '′',
] as const;
const valid = [
  '9,200 lb',
  `16'-6 1/2"`,
  '4.1 t',
  '12 %',
  '80 psi',
  '-6 in',
  'ST235/80R16 LRE 124/120L',
  'LT235/85R16 (120/116Q)',
  '8-14.5LT 10 PR',
  'P205/75R15 97S',
  'DOT XXXX XXXX 3523',
  'C8X11.5',
  'HSS4X2X3/16',
  'L2-1/2X2X1/4',
  '2x8',
  '{"trailer":{"hitch":"ball","axles":[]}}',
  '1 3/4',
] as const;
const nasty = [
  '__proto__',
  'constructor',
  'toString',
  'NaN',
  'Infinity',
  '-0',
  '1e999999',
  '0x10',
  '1_000',
  '½',
  '١٢',
  '１２',
  '\u0000',
  '\u202E12',
  '\uD800',
  '\u200B',
  '−5',
  '=1+1',
  '@SUM(A1)',
  '<b>',
  '$x',
  '../../x',
  '\r\n',
  '1,2,3',
  '..',
  '1/0',
  '0/0',
  '9'.repeat(40),
  '0.'.padEnd(60, '0'),
] as const;
const letters = 'abcLTSPRXhss0123456789./,-+ "\'()%eE\u00a0\u2009\u2044×' as const;

const single = (chance: Chance): string => letters[chance.whole(0, letters.length - 1)] ?? ' ';

function edited(chance: Chance, text: string): string {
  let so = text;
  for (let left = chance.whole(1, 4); left > 0; left -= 1) {
    const at = chance.whole(0, so.length);
    const insert = chance.happens(20) ? chance.pick(nasty) : single(chance);
    so = so.slice(0, at) + (chance.happens(60) ? insert : '') + so.slice(at + chance.whole(0, 2));
  }
  return so;
}

const digits = (chance: Chance): string =>
  Array.from({ length: chance.whole(1, 8) }, () => '0123456789.,'[chance.whole(0, 11)]).join('');

/** One hostile string. */
export function hostileString(chance: Chance): string {
  const kind = chance.whole(0, 99);
  if (kind < 45) return edited(chance, chance.pick(valid));
  if (kind < 65) return `${digits(chance)}${chance.happens(80) ? ' ' : ''}${chance.pick(units)}`;
  if (kind < 85) return Array.from({ length: chance.whole(0, 24) }, () => single(chance)).join('');
  if (kind < 97) return `${chance.pick(nasty)}${chance.happens(50) ? ` ${chance.pick(units)}` : ''}`;
  return single(chance).repeat(chance.whole(100, 2000));
}

/** Long strings of one pattern, for the time they take: `of(n)` is n times as long. */
export const longPatterns: readonly ((length: number) => string)[] = [
  ...['9', '1,', '0.', ' ', '-', '1/', "1'", '(', 'ST', 'X1', 'e9', '\u00a0', '\t', '[', '{"a":', 'LR', '12/'].map(
    (part) => (length: number) => part.repeat(Math.ceil(length / part.length)),
  ),
  (length) => `${' '.repeat(length)}lb`,
  (length) => `1${' '.repeat(length)}lb`,
  (length) => `${'1'.repeat(length)} lb`,
  (length) => `ST235/80R16 ${' '.repeat(length)}LRE`,
];
