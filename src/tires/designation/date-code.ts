/** When a tire was made. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import type { UnreadableDateCode } from '../errors.js';

export interface DateCode {
  readonly week: number;
  /** One year, or every year a three-digit code may mean. */
  readonly years: readonly number[];
  readonly notes: readonly Note[];
}

const age = note('NoAgeLimit', 'no federal rule limits the age of a tire; makers say 3 to 10 years, most often 5 or 6');
const decade = note('DecadeUnknown', 'a three-digit code does not name the decade; such tires are from before 2000');

/**
 * In which week was this tire made?
 *
 * Four digits: week, then year since 2000. Three digits: week, then the last figure of a year before 2000, of any decade.
 *
 * @param text the date code, or the whole identification number that ends in it, from the sidewall
 * @returns week 1 to 53 and the possible years; Left `UnreadableDateCode`
 * @example dateCode('3416') // Right: week 34, [2016]
 * @source trade and shop articles on tire age, grade C
 */
export function dateCode(text: string): Either<UnreadableDateCode, DateCode> {
  const bad = (needed: string): Either<UnreadableDateCode, never> =>
    left({ chapter: 'tires', tag: 'UnreadableDateCode', text: text.slice(0, 40), needed });
  if (text.length > 40) return bad('at most 40 characters');
  const digits = text.trim().split(' ').at(-1) ?? '';
  if (
    (digits.length !== 3 && digits.length !== 4) ||
    [...digits].some((character) => character < '0' || character > '9')
  )
    return bad('three or four digits at the end, apart from the rest');
  const week = Number(digits.slice(0, 2));
  if (week < 1 || week > 53) return bad('a week of 01 to 53');
  const year = Number(digits.slice(2));
  return right(
    digits.length === 4
      ? { week, years: [2000 + year], notes: [age] }
      : { week, years: [1970 + year, 1980 + year, 1990 + year], notes: [age, decade] },
  );
}
