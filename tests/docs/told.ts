/** An answer as a line of text, and whether a line that somebody wrote says the same. */
import { type Either, isLeft, isRight } from 'fp-ts/lib/Either.js';
import { isUnit, type Quantity, show, showBrief, type Unit } from '../../src/units/index.js';

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const isEither = (value: unknown): value is Either<{ tag: string }, unknown> =>
  isRecord(value) && (value['_tag'] === 'Left' || value['_tag'] === 'Right');
const isQuantity = (value: unknown): value is Quantity<Unit> =>
  isRecord(value) &&
  typeof value['unit'] === 'string' &&
  isUnit(value['unit']) &&
  isRecord(value['value']) &&
  'toFixed' in value['value'];
const isDerived = (value: unknown): value is { value: Quantity<Unit> } =>
  isRecord(value) && 'why' in value && isQuantity(value['value']);

/** Figures as they print, words as they are, lists with commas; Left by its tag. */
export function told(value: unknown): string {
  if (isQuantity(value)) return show(value);
  if (isDerived(value)) return show(value.value);
  if (isEither(value)) return isRight(value) ? `Right ${told(value.right)}` : `Left ${value.left.tag}`;
  if (Array.isArray(value)) return `[${value.map(told).join(', ')}]`;
  return isRecord(value) ? 'a record' : String(value);
}

/** Every figure and every word in an answer, wherever it stands; not those of its working. */
function facts(value: unknown, depth = 0): readonly (Quantity<Unit> | string)[] {
  if (depth > 8) return [];
  if (isQuantity(value)) return [value];
  if (isDerived(value)) return [value.value];
  if (Array.isArray(value)) return value.flatMap((part) => facts(part, depth + 1));
  return isRecord(value) ? Object.values(value).flatMap((part) => facts(part, depth + 1)) : [String(value)];
}

const figurePattern = /(?:about )?-?\d[\d,]*(?:\.\d+)?(?: (?:%|[a-zA-Z][\w/*\u00b7]*))?/g;

/** Whether a figure as written, such as `2,535 lb` or `655.3`, is one of the facts, rounded to the places it is written to; `about` allows 0.5 %. */
function stands(written: string, all: readonly (Quantity<Unit> | string)[]): boolean {
  const about = written.startsWith('about ');
  const [digits = '', word = ''] = written.replace('about ', '').replace(/,$/, '').split(' ');
  const places = digits.split('.')[1]?.length ?? 0;
  const unit = word.replaceAll('\u00b7', '*');
  return all.some((fact) => {
    if (typeof fact === 'string')
      return (
        !isUnit(unit) &&
        [...fact.matchAll(/-?\d[\d,]*(?:\.\d+)?/g)].some(
          ([found]) => found.replaceAll(',', '') === digits.replaceAll(',', ''),
        )
      );
    const [rounded = ''] = showBrief(fact, places).split(' ');
    const [found, asked] = [Number(rounded.replaceAll(',', '')), Number(digits.replaceAll(',', ''))];
    return (
      (!isUnit(unit) || fact.unit === unit) &&
      (about ? Math.abs(found - asked) <= Math.abs(asked) / 200 : found === asked)
    );
  });
}

/**
 * Whether the written result speaks of this answer. Either it is the answer's own line (`...` for digits left out, a remark
 * after a comma, a semicolon or `for`); or it begins with the right side, `Left` with the tag, and each figure, each word in
 * quotes and each tag that it names is in the answer. A claim in prose alone
 * says no more than the right side. What follows a semicolon is a remark.
 */
export function saysSo(written: string, value: unknown): boolean {
  const line = told(value);
  const plain = written.replace(/^'(.*)'$/, '$1');
  if (plain === line || [', ', '; ', ' for ', ' ('].some((remark) => plain.startsWith(line + remark))) return true;
  if (plain.includes('...') && plain.split('...').every((part) => line.includes(part.trim()))) return true;
  const [claim = ''] = plain.split('; ');
  if (claim.startsWith('Left')) return isEither(value) && isLeft(value) && claim.includes(value.left.tag);
  if (claim.startsWith('Right') && !(isEither(value) && isRight(value))) return false;
  const all = facts(isEither(value) && isRight(value) ? value.right : value);
  const figures = [...claim.replaceAll(/'[^']*'/g, '').matchAll(figurePattern)].map(([figure]) => figure);
  const words = [...claim.matchAll(/'([^']*)'|\b([A-Z][a-z]+[A-Z]\w*)\b/g)].map(
    ([, quoted, tag]) => quoted ?? (tag as string),
  );
  const prose = figures.length + words.length === 0;
  if (prose) return typeof value === 'object' && (!isEither(value) || /^Right\W+\w/.test(claim));
  return (
    figures.every((figure) => stands(figure, all) || (/over by|below/.test(claim) && stands(`-${figure}`, all))) &&
    words.every((word) => all.includes(word))
  );
}
