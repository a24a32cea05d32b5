/** What a study varies: levels of one figure, a distribution of it, or whole alternatives. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { parseAny, parseMeasure, type Quantity, type Unit } from '../../units/index.js';

/** Figures as people write them, one by one. */
export interface Levels {
  readonly kind: 'levels';
  readonly texts: readonly string[];
}

/** `count` figures from `from` to `to`, ends included, evenly spaced. */
export interface Range {
  readonly kind: 'range';
  readonly from: string;
  readonly to: string;
  readonly count: number;
}

/** A figure drawn by chance. Uniform: low, high. Triangular: low, most likely, high. Normal: mean and standard deviation, cut at four deviations. */
export interface Chance {
  readonly kind: 'chance';
  readonly shape: 'uniform' | 'triangular' | 'normal';
  readonly figures: readonly string[];
}

/** Named sets of changes: each replaces parts of the spec, `{ 'trailer.axles.0.tires': {...} }`. */
export interface Alternatives {
  readonly kind: 'alternatives';
  readonly choices: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

export type Variation = Levels | Range | Chance | Alternatives;

/** @example levels('8,000 lb', '9,000 lb') */
export const levels = (...texts: readonly string[]): Levels => ({ kind: 'levels', texts });
/** @example range('110 in', '150 in', 41) */
export const range = (from: string, to: string, count: number): Range => ({ kind: 'range', from, to, count });
/** @example uniform('8,550 lb', '9,450 lb') */
export const uniform = (low: string, high: string): Chance => ({
  kind: 'chance',
  shape: 'uniform',
  figures: [low, high],
});
/** @example triangular('8,550 lb', '9,000 lb', '9,450 lb') */
export const triangular = (low: string, likely: string, high: string): Chance => ({
  kind: 'chance',
  shape: 'triangular',
  figures: [low, likely, high],
});
/** @example normal('9,000 lb', '225 lb') */
export const normal = (mean: string, deviation: string): Chance => ({
  kind: 'chance',
  shape: 'normal',
  figures: [mean, deviation],
});
/** @example alternatives({ short: { 'trailer.axles.0.at': '170 in' } }) */
export const alternatives = (choices: Alternatives['choices']): Alternatives => ({ kind: 'alternatives', choices });

/** A text as a figure, in any unit of any dimension; feet and inches too. */
export function readLevel(text: unknown): Quantity<Unit> | undefined {
  if (typeof text !== 'string') return undefined;
  const plain = parseAny(text);
  if (!isLeft(plain)) return plain.right;
  const length = parseMeasure(text, 'length');
  return isLeft(length) ? undefined : (length.right as Quantity<Unit>);
}
