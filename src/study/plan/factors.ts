/** The numeric factors of a study, read against the spec: exact levels in the unit of their leaf, and the value of any row. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Basis, Given } from '../../trace/index.js';
import { convert, dimensionOf, type Quantity, type Unit } from '../../units/index.js';
import { ofDecimal, showInWords } from '../../units/internal.js';
import type { TooManyVariants, UnusableVariation } from '../errors.js';
import { normalQuantile } from './chance.js';
import { applyLinear, type Decimal } from './exact-numbers.js';
import { type Chance, type Levels, type Range, readLevel } from './vary.js';

/** The most levels of one figure. */
export const mostLevels = 10_000_000;

/** One varied figure. Levels are exact and made when they are asked for; a chance factor has none and draws by the share of its distribution. */
export interface Factor {
  readonly path: string;
  /** The place of the lever that moves it: linked figures have one lever together. */
  readonly axis: number;
  readonly unit: Unit;
  /** The basis of the figure in the spec; a study changes the figure, not its basis. */
  readonly basis: Basis;
  readonly levels: number;
  readonly levelAt: (level: number) => Decimal;
  /** The figure at a share from 0 to 1 of the distribution: for sampled designs. Rounded to four decimals, so that it prints short. */
  readonly atShare: (share: number) => number;
}

const unusable = (path: string, found: string, needed: string): Either<UnusableVariation, never> =>
  left({ chapter: 'study', tag: 'UnusableVariation', path, found, needed });

function inUnit(text: string, leaf: Given): Quantity<Unit> | undefined {
  const read = readLevel(text);
  if (read === undefined || dimensionOf(read.unit) !== dimensionOf(leaf.value.unit)) return undefined;
  return convert(read, leaf.value.unit as never) as Quantity<Unit>;
}

/** Four decimals are enough for a drawn figure, and print short. */
const short = (x: number): number => Math.round(x * 1e4) / 1e4;

const evenly =
  (from: Decimal, to: Decimal, count: number) =>
  (i: number): Decimal =>
    count === 1 ? from : applyLinear(from, to, i, count - 1);

/** The figure at a share of evenly likely levels, or of a distribution. */
function drawing(variation: Levels | Range | Chance, figures: readonly Decimal[]): (share: number) => number {
  const [a = 0, b = 0, c = 0] = figures.map((figure) => figure.toNumber());
  if (variation.kind === 'range') return (share) => short(a + (b - a) * share);
  if (variation.kind === 'levels') {
    const all = figures.map((figure) => figure.toNumber());
    return (share) => all[Math.min(all.length - 1, Math.floor(share * all.length))] as number;
  }
  switch (variation.shape) {
    case 'uniform':
      return (share) => short(a + (b - a) * share);
    case 'normal':
      return (share) => short(a + b * Math.max(-4, Math.min(4, normalQuantile(share))));
    case 'triangular': {
      if (c === a) return () => short(a);
      const split = (b - a) / (c - a);
      return (share) =>
        short(
          share < split ? a + Math.sqrt(share * (c - a) * (b - a)) : c - Math.sqrt((1 - share) * (c - a) * (c - b)),
        );
    }
  }
}

/** The texts of a variation, and how many levels it has: none for a distribution. */
function textsOf(variation: Levels | Range | Chance): { readonly texts: readonly string[]; readonly count: number } {
  switch (variation.kind) {
    case 'levels':
      return { texts: variation.texts, count: variation.texts.length };
    case 'range':
      return { texts: [variation.from, variation.to], count: variation.count };
    case 'chance':
      return { texts: variation.figures, count: 0 };
  }
}

/** The ends that a figure may have, in its own unit: the least told rounded up, the most rounded down. */
const within = (least: Decimal, most: Decimal, unit: Unit): string =>
  `a figure from ${showInWords(ofDecimal(least, unit), 'up')} to ${showInWords(ofDecimal(most, unit), 'down')}`;

/** One text as a figure that the spec itself would take; the deviation of a normal distribution may be any figure. */
function readFigure(path: string, text: string, leaf: Given, anySize: boolean): Either<UnusableVariation, Decimal> {
  const { unit } = leaf.value;
  const figure = inUnit(text, leaf);
  if (figure === undefined)
    return unusable(path, `"${String(text).slice(0, 40)}"`, `a figure of ${dimensionOf(unit)} with its unit`);
  const [least, most] = leaf.between ?? [];
  if (!anySize && least !== undefined && most !== undefined && (figure.value.lt(least) || figure.value.gt(most)))
    return unusable(path, showInWords(figure), within(least, most, unit));
  return right(figure.value);
}

const rises = (figures: readonly Decimal[]): boolean =>
  figures.every((figure, i) => i === 0 || figure.gte(figures[i - 1] as Decimal));

/** Reads a variation against its leaf; every level must be a figure the spec itself would take. */
export function factorOf(
  path: string,
  variation: Levels | Range | Chance,
  leaf: Given,
  axis: number,
): Either<UnusableVariation | TooManyVariants, Factor> {
  const { texts, count } = textsOf(variation);
  if (texts.length === 0) return unusable(path, 'an empty list', 'at least one level');
  if (variation.kind === 'range' && !(Number.isInteger(count) && count >= 1))
    return unusable(path, `a count of ${count}`, 'a whole number of levels');
  if (count > mostLevels) return left({ chapter: 'study', tag: 'TooManyVariants', count, most: mostLevels, path });
  const isNormal = variation.kind === 'chance' && variation.shape === 'normal';
  const figures: Decimal[] = [];
  for (const [index, text] of texts.entries()) {
    const figure = readFigure(path, text, leaf, isNormal && index === 1);
    if (isLeft(figure)) return figure;
    figures.push(figure.right);
  }
  if (variation.kind === 'chance' && !isNormal && !rises(figures))
    return unusable(path, texts.join(', '), 'figures that rise');
  const [first, second] = figures as [Decimal, Decimal];
  return right({
    path,
    axis,
    unit: leaf.value.unit,
    basis: leaf.basis,
    levels: count,
    levelAt: variation.kind === 'range' ? evenly(first, second, count) : (level) => figures[level] as Decimal,
    atShare: drawing(variation, figures),
  });
}
