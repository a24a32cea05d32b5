/** What a study varies: levels of one figure, a distribution of it, or whole alternatives. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { parseAny, parseMeasure, type Quantity, type Unit } from '../../units/index.js';

/** Figures as people write them, one by one. */
export interface Levels {
  /** Which variation it is. */
  readonly kind: 'levels';
  /** The figures as text with their unit: `9,000 lb`. */
  readonly texts: readonly string[];
}

/** `count` figures from `from` to `to`, ends included, evenly spaced. */
export interface Range {
  /** Which variation it is. */
  readonly kind: 'range';
  /** The first figure, as text with its unit. */
  readonly from: string;
  /** The last figure, as text with its unit. */
  readonly to: string;
  /** How many figures, both ends counted. */
  readonly count: number;
}

/** A figure drawn by chance. Uniform: low, high. Triangular: low, most likely, high. Normal: mean and standard deviation, cut at four deviations. */
export interface Chance {
  /** Which variation it is. */
  readonly kind: 'chance';
  /** The distribution. */
  readonly shape: 'uniform' | 'triangular' | 'normal';
  /** Its figures as text with their unit, in the order that the shape asks. */
  readonly figures: readonly string[];
}

/** Named sets of changes: each replaces parts of the spec, `{ 'trailer.axles.0.tires': {...} }`. */
export interface Alternatives {
  /** Which variation it is. */
  readonly kind: 'alternatives';
  /** Each alternative by name, and what it puts at which key of the spec. */
  readonly choices: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

/** Figures that move together, level by level: the first of each path, then the second of each. All have as many levels. */
export interface Linked {
  /** Which variation it is. */
  readonly kind: 'linked';
  /** What each key takes on, level by level. */
  readonly figures: Readonly<Record<string, Levels | Range | Chance>>;
}

/** An option that adds weight to the empty trailer: its weight and the place of its balance point. */
export interface AddedOption {
  /** A weight as text, `"62 lb"`. */
  readonly weight: string;
  /** A place behind the coupler as text, `"20 in"`. */
  readonly at: string;
}

/** Options, each on the trailer or not: every combination is a build of its own. */
export interface Added {
  /** Which variation it is. */
  readonly kind: 'added';
  /** Each option by name. */
  readonly options: Readonly<Record<string, AddedOption>>;
}

/** What a plan varies under one name: a path and its figures, or a name and figures that move together, options, or whole alternatives. */
export type Variation = Levels | Range | Chance | Linked | Added | Alternatives;

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

/** Both axles as one, or a deck length with all that it moves. @example linked({ 'trailer.axles.0.at': range('180 in', '190 in', 11), 'trailer.axles.1.at': range('214 in', '224 in', 11) }) */
export const linked = (figures: Linked['figures']): Linked => ({ kind: 'linked', figures });
/** @example added({ 'spare tire': { weight: '62 lb', at: '20 in' }, winch: { weight: '95 lb', at: '35 in' } }) */
export const added = (options: Added['options']): Added => ({ kind: 'added', options });

/** A text as a figure, in any unit of any dimension; feet and inches too. */
export function readLevel(text: unknown): Quantity<Unit> | undefined {
  if (typeof text !== 'string') return undefined;
  const plain = parseAny(text);
  if (!isLeft(plain)) return plain.right;
  const length = parseMeasure(text, 'length');
  return isLeft(length) ? undefined : (length.right as Quantity<Unit>);
}
