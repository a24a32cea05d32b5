/** Every combination: the row number, read as a number whose digits are the levels. */
import type { Factor } from './factors.js';
import type { Axis, ChoiceFactor, PlannedDesign } from './planned.js';

type Column = Float64Array | Int16Array;

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

/** Every combination of choices and levels. */
export function grid(
  choices: readonly ChoiceFactor[],
  axes: readonly Axis[],
  factors: readonly Factor[],
): PlannedDesign {
  const sizes = [...choices.map((choice) => choice.choices.length), ...axes.map(({ levels }) => levels)];
  const lever = (factor: number): number => choices.length + (factors[factor] as Factor).axis;
  const strides = sizes.map((_, i) => sizes.slice(i + 1).reduce((product, size) => product * size, 1));
  const doubles = factors.map(doublesOf);
  const place = (row: number, i: number): number => Math.floor(row / (strides[i] as number)) % (sizes[i] as number);
  const levelAt = (row: number, factor: number): number => place(row, lever(factor));
  const fill = (i: number, start: number, rows: number, column: Column, of: (level: number) => number): void =>
    fillByStride(strides[i] as number, sizes[i] as number, start, rows, column, of);
  return {
    count: sizes.reduce((product, size) => product * size, 1),
    choiceAt: place,
    levelAt,
    valueAt: (row, factor) => (doubles[factor] as (level: number) => number)(levelAt(row, factor)),
    fillChoices: (choice, start, rows, column) => fill(choice, start, rows, column, (index) => index),
    fillValues: (factor, start, rows, column) =>
      fill(lever(factor), start, rows, column, doubles[factor] as (level: number) => number),
  };
}
