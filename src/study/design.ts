/** Which points a study visits, addressed by row: any slice of a design can be run anywhere and is the same. */
import { shuffledPlace, uniformAt } from './chance.js';
import type { Factor } from './factors.js';

/** Every combination; one factor after another with the others at the spec's own values; or `runs` sampled points. */
export type Design =
  | { readonly kind: 'grid' }
  | { readonly kind: 'one at a time' }
  | { readonly kind: 'latin hypercube'; readonly runs: number; readonly seed: number }
  | { readonly kind: 'monte carlo'; readonly runs: number; readonly seed: number };

/** Named alternatives: how many choices there are. Choice -1 is the spec as it stands. */
export interface ChoiceFactor {
  readonly name: string;
  readonly choices: readonly string[];
}

type Column = Float64Array | Int16Array;

/** Points by row. Choices vary slowest, then the factors in the order they were given, the last one fastest. */
export interface PlannedDesign {
  readonly count: number;
  /** The index of a choice; -1 for the spec as it stands. */
  readonly choiceAt: (row: number, choice: number) => number;
  /** The figure of a factor on a row, as a double. */
  readonly valueAt: (row: number, factor: number) => number;
  /** The level index behind it, when the design uses exact levels; -1 otherwise. */
  readonly levelAt: (row: number, factor: number) => number;
  /** The same for consecutive rows from `start`. */
  readonly fillChoices: (choice: number, start: number, rows: number, column: Int16Array) => void;
  readonly fillValues: (factor: number, start: number, rows: number, column: Float64Array) => void;
}

/** Levels as doubles, each made when it is first met. */
function doublesOf({ levels, levelAt }: Factor): (level: number) => number {
  let kept: Float64Array | undefined;
  return (level) => {
    kept ??= new Float64Array(levels).fill(Number.NaN);
    const known = kept[level] as number;
    if (!Number.isNaN(known)) return known;
    const made = levelAt(level).toNumber();
    kept[level] = made;
    return made;
  };
}

/** Fills a column whose figure changes every `stride` rows and comes round after `size` figures. */
function fillByStride(
  stride: number,
  size: number,
  start: number,
  rows: number,
  column: Column,
  of: (level: number) => number,
): void {
  let level = Math.floor(start / stride) % size;
  let left = stride - (start % stride);
  for (let i = 0; i < rows; ) {
    const end = Math.min(rows, i + left);
    const value = of(level);
    while (i < end) {
      column[i] = value;
      i += 1;
    }
    left = stride;
    level = level + 1 === size ? 0 : level + 1;
  }
}

function grid(choices: readonly ChoiceFactor[], factors: readonly Factor[]): PlannedDesign {
  const sizes = [...choices.map((choice) => choice.choices.length), ...factors.map(({ levels }) => levels)];
  const strides = sizes.map((_, i) => sizes.slice(i + 1).reduce((product, size) => product * size, 1));
  const doubles = factors.map(doublesOf);
  const place = (row: number, i: number): number => Math.floor(row / (strides[i] as number)) % (sizes[i] as number);
  const levelAt = (row: number, factor: number): number => place(row, choices.length + factor);
  const fill = (i: number, start: number, rows: number, column: Column, of: (level: number) => number): void =>
    fillByStride(strides[i] as number, sizes[i] as number, start, rows, column, of);
  return {
    count: sizes.reduce((product, size) => product * size, 1),
    choiceAt: place,
    levelAt,
    valueAt: (row, factor) => (doubles[factor] as (level: number) => number)(levelAt(row, factor)),
    fillChoices: (choice, start, rows, column) => fill(choice, start, rows, column, (index) => index),
    fillValues: (factor, start, rows, column) =>
      fill(choices.length + factor, start, rows, column, doubles[factor] as (level: number) => number),
  };
}

/** A design known row by row only. */
function rowByRow(design: Omit<PlannedDesign, 'fillChoices' | 'fillValues'>): PlannedDesign {
  return {
    ...design,
    fillChoices: (choice, start, rows, column) => {
      for (let i = 0; i < rows; i += 1) column[i] = design.choiceAt(start + i, choice);
    },
    fillValues: (factor, start, rows, column) => {
      for (let i = 0; i < rows; i += 1) column[i] = design.valueAt(start + i, factor);
    },
  };
}

function oneByOne(choices: readonly ChoiceFactor[], factors: readonly Factor[], own: readonly number[]): PlannedDesign {
  const spans = [1, ...choices.map((choice) => choice.choices.length), ...factors.map(({ levels }) => levels)];
  const starts = spans.map((_, i) => spans.slice(0, i).reduce((sum, span) => sum + span, 0));
  const within = (row: number, i: number): number => {
    const place = row - (starts[i] as number);
    return place >= 0 && place < (spans[i] as number) ? place : -1;
  };
  const levelAt = (row: number, factor: number): number => within(row, 1 + choices.length + factor);
  return rowByRow({
    count: spans.reduce((sum, span) => sum + span, 0),
    choiceAt: (row, choice) => within(row, 1 + choice),
    levelAt,
    valueAt: (row, factor) => {
      const level = levelAt(row, factor);
      return level < 0 ? (own[factor] as number) : (factors[factor] as Factor).levelAt(level).toNumber();
    },
  });
}

function sampled(
  design: Extract<Design, { seed: number }>,
  choices: readonly ChoiceFactor[],
  factors: readonly Factor[],
): PlannedDesign {
  const { runs, seed } = design;
  const share = (row: number, k: number): number =>
    design.kind === 'monte carlo'
      ? uniformAt(seed, row, k)
      : (shuffledPlace(seed, k, row, runs) + uniformAt(seed, row, k)) / runs;
  return rowByRow({
    count: runs,
    choiceAt: (row, choice) => {
      const size = (choices[choice] as ChoiceFactor).choices.length;
      return Math.min(size - 1, Math.floor(share(row, choice) * size));
    },
    levelAt: () => -1,
    valueAt: (row, factor) => (factors[factor] as Factor).atShare(share(row, choices.length + factor)),
  });
}

/** Plans a design. `own` are the spec's own values of the factors. */
export function plan(
  design: Design,
  choices: readonly ChoiceFactor[],
  factors: readonly Factor[],
  own: readonly number[],
): PlannedDesign {
  switch (design.kind) {
    case 'grid':
      return grid(choices, factors);
    case 'one at a time':
      return oneByOne(choices, factors, own);
    case 'latin hypercube':
    case 'monte carlo':
      return sampled(design, choices, factors);
  }
}
