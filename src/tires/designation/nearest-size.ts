/** The printed sizes nearest to a size as sellers write it: the same numbers, without the letters that the print has. */
import { lb, show } from '../../units/index.js';
import { editDistance } from '../../units/internal.js';
import { inflationTables } from '../tables.js';

/** The numbers of a size; what follows the third is no part of it. */
const numbersOf = (text: string): readonly number[] => (text.match(/\d+(\.\d+)?/g) ?? []).slice(0, 3).map(Number);

/** How many numbers only one of the two sizes has. */
export function numbersApart(one: string, other: string): number {
  const [a, b] = [numbersOf(one), numbersOf(other)];
  return a.filter((figure) => !b.includes(figure)).length + b.filter((figure) => !a.includes(figure)).length;
}

/** For sorting: sizes of the same numbers first, then those that differ by few letters. */
export const sizeDistance = (asked: string, size: string): number =>
  100 * numbersApart(asked, size) + editDistance(asked, size);

/** A printed row of sizes that have one number more or less than the text: of the load range in the text, or the first there is. */
export function rowsLike(text: string): readonly string[] {
  const asked = /LR\s?([A-N])/i.exec(text)?.[1]?.toUpperCase();
  const near = inflationTables.flatMap(({ rows }) => rows.filter(([size]) => numbersApart(text, size) <= 1));
  const sizes = [...new Set(near.map(([size]) => size))].slice(0, 3);
  return sizes.flatMap((size) => {
    const rows = near.filter((row) => row[0] === size && row[3] !== '');
    const row = rows.find(([, letter]) => letter === asked) ?? rows[0];
    return row === undefined
      ? []
      : [`${[size, row[1]].filter((part) => part !== '').join(' ')} at ${row[2]} psi, ${show(lb(row[3]))}`];
  });
}

const lettersBefore = (key: string): string => /^(ST|LT)(?=\d)/.exec(key)?.[0] ?? '';
const lettersBehind = (key: string): string => /(ST|LT|MH|C)$/.exec(key)?.[0] ?? '';

const either = (words: readonly string[]): string => words.join(' or ');

/**
 * What a size lacks that the printed sizes of the same numbers have: ST in front, MH behind, a second width. It is not filled in:
 * only the sidewall can tell.
 */
export function whatIsMissing(asked: string, printed: readonly string[]): string | undefined {
  const same = printed.filter((key) => key !== asked && numbersApart(asked, key) === 0);
  const before = new Set(same.map(lettersBefore).filter((letters) => letters !== '' && lettersBefore(asked) === ''));
  if (before.size > 0)
    return `${either([...before])} is missing in front of the size: write it where the sidewall says so`;
  const behind = new Set(same.map(lettersBehind).filter((letters) => letters !== '' && lettersBehind(asked) === ''));
  if (behind.size > 0) return `${either([...behind])} is missing behind the size: write it where the sidewall says so`;
  const [width] = asked.split('-');
  const wider = printed.filter((key) => key.startsWith(`${width}/`) && numbersApart(asked, key) === 1);
  return wider.length > 0 && !asked.includes('/')
    ? `the second width is missing: write ${either(wider)} where the sidewall says so`
    : undefined;
}
