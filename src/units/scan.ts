/** Reading figures character by character: every step moves forward, so the time grows with the length only. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { Decimal } from './decimal.js';
import type { UnreadableQuantity } from './errors.js';

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

/** A space that may stand between groups of three: plain, no-break, narrow no-break, figure, thin. */
const isSpace = (character: string | undefined): boolean =>
  character === ' ' ||
  character === '\u00a0' ||
  character === '\u202f' ||
  character === '\u2007' ||
  character === '\u2009';

export function skipSpaces({ text, at }: Cursor): Cursor {
  let next = at;
  while (isSpace(text[next]) || text[next] === '\t') next += 1;
  return { text, at: next };
}

const isDigit = (character: string | undefined): boolean =>
  character !== undefined && character >= '0' && character <= '9';

export function digitsFrom(cursor: Cursor): string {
  let end = cursor.at;
  while (isDigit(cursor.text[end])) end += 1;
  return cursor.text.slice(cursor.at, end);
}

/** A number that was read, as its plain digits or worked out from a fraction, and the place behind it. */
export interface Scanned {
  readonly value: string | Decimal;
  readonly next: Cursor;
}

/** The decimal of a number that was read. */
export const decimalIn = ({ value }: Scanned): Decimal => (typeof value === 'string' ? new Decimal(value) : value);

/** A sign, if there is one: `+`, `-` or the minus of print. */
export function scanSign({ text, at }: Cursor): { readonly negative: boolean; readonly next: Cursor } {
  const negative = text[at] === '-' || text[at] === '\u2212';
  return { negative, next: { text, at: negative || text[at] === '+' ? at + 1 : at } };
}

/** The slash of a fraction, plain or as print has it. */
export const isFractionSlash = ({ text, at }: Cursor): boolean => text[at] === '/' || text[at] === '\u2044';

/** Digits in groups of three behind the first group: commas, or spaces of one kind. Digits before a slash are a fraction's. */
function scanGroups(first: string, { text, at }: Cursor): Either<UnreadableQuantity, { digits: string; next: Cursor }> {
  let digits = first;
  let next = at;
  const mark = text[at];
  const name = mark === ',' ? 'comma' : 'space';
  while (mark !== undefined && (mark === ',' || isSpace(mark)) && text[next] === mark) {
    const group = digitsFrom({ text, at: next + 1 });
    const end = next + 1 + group.length;
    if (mark !== ',' && (group === '' || isFractionSlash({ text, at: end }))) break;
    if (first.startsWith('0') && mark === ',')
      return unreadable({ text, at: next }, 'no comma after a leading zero; the decimal point is "."');
    if (first.startsWith('0') || first.length > 3)
      return unreadable({ text, at: next }, `${name}s between groups of three digits`);
    if (group.length !== 3) return unreadable({ text, at: next + 1 }, `a group of three digits after the ${name}`);
    digits += group;
    next = end;
  }
  if (next > at && (text[next] === ',' || (isSpace(text[next]) && digitsFrom({ text, at: next + 1 }).length === 3)))
    return unreadable({ text, at: next }, 'one mark between all groups of three digits');
  return right({ digits, next: { text, at: next } });
}

/** `1150`, `9,200`, `9 200`, `7000.5`, `.5`, `-12`: marks only between groups of three, one decimal point, no exponent. */
export function scanNumber(cursor: Cursor): Either<UnreadableQuantity, Scanned> {
  const { text } = cursor;
  const { negative, next } = scanSign(cursor);
  const first = digitsFrom(next);
  const bare = first === '' && text[next.at] === '.';
  if (first === '' && (!bare || digitsFrom({ text, at: next.at + 1 }) === '')) return unreadable(next, 'a digit');
  const groups = scanGroups(first, { text, at: next.at + first.length });
  if (isLeft(groups)) return groups;
  let { at } = groups.right.next;
  let fraction = '';
  if (text[at] === '.') {
    fraction = digitsFrom({ text, at: at + 1 });
    if (fraction === '') return unreadable({ text, at: at + 1 }, 'a digit after the decimal point');
    at += 1 + fraction.length;
  }
  const whole = groups.right.digits === '' ? '0' : groups.right.digits;
  const value = `${negative ? '-' : ''}${whole}${fraction === '' ? '' : `.${fraction}`}`;
  return right({ value, next: { text, at } });
}
