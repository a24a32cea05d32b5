/** Figures as people write them: `10,000 lb`, `1150 kg`, `16' 6 1/2"`. The whole text is consumed, or the error points. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { convert } from './convert.js';
import { Decimal, zero } from './decimal.js';
import { type UnreadableQuantity, type UnitsError, wrongUnit } from './errors.js';
import { ofDecimal, type Quantity } from './quantity.js';
import { type Cursor, digitsFrom, scanNumber, skipSpaces, start, unitNamed, unreadable } from './scan.js';
import { type Dimension, dimensionOf, type Unit, type UnitOf } from './unit-list.js';

/** A figure of any unit. */
export type AnyQuantity = Quantity<Unit>;

/** Reads a number and the word behind it, whatever the unit. @example parseAny('1150 kg') // Right 1,150 kg */
export function parseAny(text: string): Either<UnreadableQuantity, AnyQuantity> {
  const begun = start(text);
  if (isLeft(begun)) return begun;
  const number = scanNumber(begun.right);
  if (isLeft(number)) return number;
  const from = skipSpaces(number.right.next);
  const word = text.slice(from.at).trimEnd();
  const unit = unitNamed(word);
  if (unit === undefined) return unreadable(from, 'a unit this library knows, such as lb, kg, in, ft, psi');
  return right(ofDecimal(number.right.value, unit) as AnyQuantity);
}

/**
 * What figure does this text say, in exactly this unit?
 *
 * @returns Left `UnreadableQuantity` (with the character) or `WrongUnit`: kilograms are never taken for pounds.
 * @example parseQuantity('10,000 lb', 'lb') // Right 10,000 lb
 */
export function parseQuantity<U extends Unit>(text: string, unit: U): Either<UnitsError, Quantity<U>> {
  const read = parseAny(text);
  if (isLeft(read)) return read;
  return read.right.unit === unit
    ? right(read.right as unknown as Quantity<U>)
    : left(wrongUnit(read.right.unit, unit));
}

/** What figure does this text say, in any unit of this dimension? A length may be feet and inches. @example parseMeasure(`20 ft`, 'length') // Right 20 ft */
export function parseMeasure<D extends Dimension>(text: string, dimension: D): Either<UnitsError, Quantity<UnitOf<D>>> {
  const read: Either<UnitsError, AnyQuantity> = dimension === 'length' ? parseAnyLength(text) : parseAny(text);
  if (isLeft(read)) return read;
  return dimensionOf(read.right.unit) === dimension
    ? right(read.right as unknown as Quantity<UnitOf<D>>)
    : left(wrongUnit(read.right.unit, dimension));
}

/**
 * What length does this text say, in this unit? Reads feet and inches with a shop fraction as well as any plain length.
 *
 * @example parseLength(`16' 6 1/2"`, 'in') // Right 198.5 in
 */
export function parseLength<U extends UnitOf<'length'>>(text: string, unit: U): Either<UnitsError, Quantity<U>> {
  const read = parseMeasure(text, 'length');
  if (isLeft(read)) return read;
  return right(convert(read.right as Quantity<UnitOf<'length'>>, unit as UnitOf<'length'>) as unknown as Quantity<U>);
}

/** `5`, `6 1/2`, `1/2`: a number with an optional shop fraction in halves to sixty-fourths. */
function scanMixed(cursor: Cursor): Either<UnreadableQuantity, { value: Decimal; next: Cursor }> {
  const number = scanNumber(cursor);
  if (isLeft(number)) return number;
  const { value, next } = number.right;
  if (cursor.text[next.at] === '/') return scanFraction(zero, value, next);
  const gap = skipSpaces(next);
  const numerator = digitsFrom(gap);
  if (numerator === '' || cursor.text[gap.at + numerator.length] !== '/') return number;
  return scanFraction(value, new Decimal(numerator), { text: gap.text, at: gap.at + numerator.length });
}

function scanFraction(
  whole: Decimal,
  numerator: Decimal,
  slash: Cursor,
): Either<UnreadableQuantity, { value: Decimal; next: Cursor }> {
  const bottom = { text: slash.text, at: slash.at + 1 };
  const denominator = digitsFrom(bottom);
  if (!['2', '4', '8', '16', '32', '64'].includes(denominator))
    return unreadable(bottom, 'a fraction in 2nds, 4ths, 8ths, 16ths, 32nds or 64ths');
  if (!numerator.isInteger() || !whole.isInteger()) return unreadable(slash, 'whole numbers around a fraction');
  if (!whole.isZero() && numerator.gte(denominator))
    return unreadable(slash, 'a fraction below one after the whole number');
  const size = whole.abs().plus(numerator.abs().div(denominator));
  const value = whole.isNegative() || numerator.isNegative() ? size.neg() : size;
  return right({ value, next: { text: slash.text, at: bottom.at + denominator.length } });
}

const lengthWord = (cursor: Cursor): string =>
  /^[a-zA-Z'"\u2032\u2033]{0,12}/.exec(cursor.text.slice(cursor.at, cursor.at + 12))?.[0] ?? '';

function parseAnyLength(text: string): Either<UnreadableQuantity, AnyQuantity> {
  const begun = start(text);
  if (isLeft(begun)) return begun;
  const first = scanMixed(begun.right);
  if (isLeft(first)) return first;
  const at = skipSpaces(first.right.next);
  const word = lengthWord(at);
  const unit = word === '' ? undefined : unitNamed(word);
  if (unit === undefined) return unreadable(at, 'a unit of length, such as in, ft, mm');
  const rest = skipSpaces({ text, at: at.at + word.length });
  if (rest.at === text.length) return right(ofDecimal(first.right.value, unit) as AnyQuantity);
  if (unit !== 'ft') return unreadable(rest, 'nothing more');
  if (!first.right.value.isInteger()) return unreadable(rest, 'nothing after feet with a fraction');
  const inches = scanMixed(rest);
  if (isLeft(inches)) return inches;
  const behind = skipSpaces(inches.right.next);
  const inchWord = lengthWord(behind);
  if (inchWord === '' || unitNamed(inchWord) !== 'in') return unreadable(behind, 'inches after the feet');
  const end = skipSpaces({ text, at: behind.at + inchWord.length });
  if (end.at !== text.length) return unreadable(end, 'nothing more');
  if (inches.right.value.isNegative()) return unreadable(rest, 'inches without a sign');
  if (inches.right.value.gte(12)) return unreadable(rest, 'fewer than 12 inches after the feet');
  const feet = first.right.value.times(12);
  const negative = text.trimStart().startsWith('-');
  return right(
    ofDecimal(negative ? feet.minus(inches.right.value) : feet.plus(inches.right.value), 'in') as AnyQuantity,
  );
}
