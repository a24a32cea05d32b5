/** Numbers with a fraction: `6 1/2`, `6-1/2`, `6½`, `1/2`, `½`. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { Decimal, zero } from './decimal.js';
import type { UnreadableQuantity } from './errors.js';
import {
  type Cursor,
  decimalIn,
  digitsFrom,
  isFractionSlash,
  type Scanned,
  scanNumber,
  scanSign,
  skipSpaces,
  unreadable,
} from './scan.js';

/** The fractions that are one character. */
const vulgar: ReadonlyMap<string, readonly [top: number, bottom: number]> = new Map([
  ['\u00bd', [1, 2]],
  ['\u2153', [1, 3]],
  ['\u2154', [2, 3]],
  ['\u00bc', [1, 4]],
  ['\u00be', [3, 4]],
  ['\u2155', [1, 5]],
  ['\u2156', [2, 5]],
  ['\u2157', [3, 5]],
  ['\u2158', [4, 5]],
  ['\u2159', [1, 6]],
  ['\u215a', [5, 6]],
  ['\u2150', [1, 7]],
  ['\u215b', [1, 8]],
  ['\u215c', [3, 8]],
  ['\u215d', [5, 8]],
  ['\u215e', [7, 8]],
  ['\u2151', [1, 9]],
  ['\u2152', [1, 10]],
]);

/** A separator between a whole number and its fraction, or between feet and inches, that is not a minus. */
export const isJoint = (character: string | undefined): boolean =>
  character === '-' || character === '\u2010' || character === '\u2011' || character === '\u2013';

const signed = (size: Decimal, negative: boolean): Decimal => (negative ? size.neg() : size);

/** A fraction of one character behind a whole number, or alone. */
function scanVulgar(whole: Decimal, negative: boolean, { text, at }: Cursor): Scanned | undefined {
  const parts = vulgar.get(text[at] ?? '');
  if (parts === undefined) return undefined;
  const size = whole.abs().plus(new Decimal(parts[0]).div(parts[1]));
  return { value: signed(size, negative), next: { text, at: at + 1 } };
}

/** The place behind spaces or a joint, where the fraction of a mixed number may begin. */
function behindWhole(next: Cursor): Cursor {
  const joint = isJoint(next.text[next.at]);
  return joint ? { text: next.text, at: next.at + 1 } : skipSpaces(next);
}

/** A number with an optional fraction of one character, in any unit: `6`, `6.5`, `6½`, `6 ½`, `½`. */
export function scanFigure(cursor: Cursor): Either<UnreadableQuantity, Scanned> {
  const { negative, next: unsigned } = scanSign(cursor);
  const alone = scanVulgar(zero, negative, unsigned);
  if (alone !== undefined) return right(alone);
  const number = scanNumber(cursor);
  if (isLeft(number)) return number;
  const place = behindWhole(number.right.next);
  if (!vulgar.has(place.text[place.at] ?? '')) return number;
  const value = decimalIn(number.right);
  const mixed = scanVulgar(value, negative, place);
  if (mixed === undefined) return number;
  return value.isInteger() ? right(mixed) : unreadable(place, 'a whole number before a fraction');
}

/** The same, and fractions with a slash in halves to sixty-fourths, as lengths have them. */
export function scanMixed(cursor: Cursor): Either<UnreadableQuantity, Scanned> {
  const figure = scanFigure(cursor);
  if (isLeft(figure)) return figure;
  const { next } = figure.right;
  if (isFractionSlash(next)) return scanFraction(zero, decimalIn(figure.right), cursor, next);
  const top = behindWhole(next);
  const digits = digitsFrom(top);
  const slash = { text: top.text, at: top.at + digits.length };
  return digits === '' || !isFractionSlash(slash)
    ? figure
    : scanFraction(decimalIn(figure.right), new Decimal(digits), top, slash);
}

const denominators = ['2', '4', '8', '16', '32', '64'];

/** `whole top/bottom`; without a whole number the sign is before the top. */
function scanFraction(whole: Decimal, top: Decimal, begin: Cursor, slash: Cursor): Either<UnreadableQuantity, Scanned> {
  const place = { text: slash.text, at: slash.at + 1 };
  const bottom = digitsFrom(place);
  if (!denominators.includes(bottom)) return unreadable(place, 'a fraction in 2nds, 4ths, 8ths, 16ths, 32nds or 64ths');
  if (!top.isInteger() || !whole.isInteger()) return unreadable(slash, 'whole numbers around a fraction');
  if (!whole.isZero() && top.gte(bottom)) return unreadable(slash, 'a fraction below one after the whole number');
  const tight = whole.isZero() ? twoReadings(top, bottom) : undefined;
  if (tight !== undefined) return unreadable(scanSign(begin).next, tight);
  const value = signed(whole.abs().plus(top.abs().div(bottom)), whole.isNegative() || top.isNegative());
  return right({ value, next: { text: slash.text, at: place.at + bottom.length } });
}

/**
 * `31/2` is 31 halves, or 3 1/2 written without its space. A top above its bottom is refused when its last digits could be
 * the top of a fraction below one.
 */
function twoReadings(top: Decimal, bottom: string): string | undefined {
  if (top.abs().lte(bottom)) return undefined;
  const digits = top.abs().toFixed();
  const mixed = [1, 2]
    .filter((length) => length < digits.length)
    .map((length) => [digits.slice(0, -length), digits.slice(-length)] as const)
    .filter(([, last]) => !last.startsWith('0') && Number(last) < Number(bottom))
    .map(([first, last]) => `${first} ${last}/${bottom}`);
  if (mixed.length === 0) return undefined;
  const whole = top.abs().divToInt(bottom);
  const rest = top.abs().minus(whole.times(bottom));
  return `one meaning: is it ${mixed.join(', ')} or ${digits}/${bottom}? Write a space before the fraction, or ${whole.toFixed()}${rest.isZero() ? '' : ` ${rest.toFixed()}/${bottom}`}`;
}
