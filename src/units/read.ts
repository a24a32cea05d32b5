/** Figures as people write them: `10,000 lb`, `1 150 kg`, `16' 6 1/2"`, `16'-6½"`. Parses the whole text; on failure the error gives the character position. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { convert } from './convert.js';
import { type UnitsError, type UnreadableQuantity, wrongUnit } from './errors.js';
import { ofDecimal } from './figure.js';
import { isJoint, scanFigure, scanMixed } from './fractions.js';
import { type Quantity, quantity } from './quantity.js';
import { type Cursor, decimalIn, digitsFrom, type Scanned, skipSpaces, start, unreadable } from './scan.js';
import { type Dimension, dimensionOf, type Unit, type UnitOf } from './unit-list.js';
import { insteadOf, unitNamed } from './unit-words.js';

/** A figure of any unit. */
export type AnyQuantity = Quantity<Unit>;

const unitNeeded = (from: Cursor): string =>
  /^\d*[/\u2044]/.test(from.text.slice(from.at))
    ? 'a decimal, such as 12.5: fractions with a slash are read in lengths only'
    : 'a unit this library knows, such as lb, kg, in, ft, psi';

/** Reads a number and the word behind it, whatever the unit. @example parseAny('1150 kg') // Right 1,150 kg */
export function parseAny(text: string): Either<UnreadableQuantity, AnyQuantity> {
  const begun = start(text);
  if (isLeft(begun)) return begun;
  const number = scanFigure(begun.right);
  if (isLeft(number)) return number;
  const from = skipSpaces(number.right.next);
  const word = text.slice(from.at).trimEnd();
  const unit = unitNamed(word);
  if (unit === undefined) return unreadable(from, insteadOf(word, decimalIn(number.right)) ?? unitNeeded(from));
  return right(quantity(number.right.value, unit) as AnyQuantity);
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

/** The word for a unit of length, with its stop: letters, or the marks of feet and inches. */
function lengthWord({ text, at }: Cursor): string {
  const letters = /^[a-zA-Z]{0,12}/.exec(text.slice(at))?.[0] ?? '';
  if (letters !== '') return text[at + letters.length] === '.' ? `${letters}.` : letters;
  return text.slice(at, at + (unitNamed(text.slice(at, at + 2)) === 'in' ? 2 : 1));
}

interface LengthUnit {
  readonly unit: Unit;
  readonly next: Cursor;
}

function scanLengthUnit(number: Scanned, needed: string): Either<UnreadableQuantity, LengthUnit> {
  const at = skipSpaces(number.next);
  const word = lengthWord(at);
  const unit = word.trim() === '' ? undefined : unitNamed(word);
  if (unit === undefined) return unreadable(at, insteadOf(word, decimalIn(number)) ?? needed);
  const end = at.at + word.length;
  if (word.endsWith('.') && digitsFrom({ text: at.text, at: end }) !== '')
    return unreadable({ text: at.text, at: end }, 'a space after the stop');
  return right({ unit, next: { text: at.text, at: end } });
}

/** The inches behind the feet: `16' 6"`, `16'-6"`, `16' - 6"`. In `16' -6"` the dash is a sign, and is left standing. */
function inchesAfter(feet: Cursor): Cursor {
  const place = skipSpaces(feet);
  if (!isJoint(place.text[place.at])) return place;
  const behind = { text: place.text, at: place.at + 1 };
  const inches = skipSpaces(behind);
  return place.at > feet.at && inches.at === behind.at ? place : inches;
}

function parseAnyLength(text: string): Either<UnreadableQuantity, AnyQuantity> {
  const begun = start(text);
  if (isLeft(begun)) return begun;
  const first = scanMixed(begun.right);
  if (isLeft(first)) return first;
  const read = scanLengthUnit(first.right, 'a unit of length, such as in, ft, mm');
  if (isLeft(read)) return read;
  const { unit, next } = read.right;
  const rest = skipSpaces(next);
  if (text.slice(rest.at).trimEnd() === '') return right(quantity(first.right.value, unit) as AnyQuantity);
  if (dimensionOf(unit) !== 'length') return parseAny(text);
  if (unit !== 'ft') return unreadable(rest, 'nothing more');
  const feet = decimalIn(first.right);
  if (!feet.isInteger()) return unreadable(rest, 'nothing after feet with a fraction');
  const place = inchesAfter(next);
  const inches = scanMixed(place);
  if (isLeft(inches)) return inches;
  const inchUnit = scanLengthUnit(inches.right, 'inches after the feet');
  if (isLeft(inchUnit)) return inchUnit;
  if (inchUnit.right.unit !== 'in') return unreadable(skipSpaces(inches.right.next), 'inches after the feet');
  const end = skipSpaces(inchUnit.right.next);
  if (text.slice(end.at).trimEnd() !== '') return unreadable(end, 'nothing more');
  const inchesRead = decimalIn(inches.right);
  if (inchesRead.isNegative()) return unreadable(place, 'inches without a sign');
  if (inchesRead.gte(12)) return unreadable(place, 'fewer than 12 inches after the feet');
  const size = feet.abs().times(12).plus(inchesRead);
  return right(ofDecimal(feet.isNegative() ? size.neg() : size, 'in') as AnyQuantity);
}
