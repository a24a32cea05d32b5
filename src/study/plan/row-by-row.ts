/** Designs whose points are worked out row by row: one factor at a time, and samples. */
import { shuffledPlace, uniformAt } from './chance.js';
import type { Design } from './design.js';
import type { Factor } from './factors.js';
import type { Axis, ChoiceFactor, PlannedDesign } from './planned.js';

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

/** The unchanged spec, then each choice and each level of one factor after another. */
export function oneByOne(
  choices: readonly ChoiceFactor[],
  axes: readonly Axis[],
  factors: readonly Factor[],
  own: readonly number[],
): PlannedDesign {
  const spans = [1, ...choices.map((choice) => choice.choices.length), ...axes.map(({ levels }) => levels)];
  const starts = spans.map((_, i) => spans.slice(0, i).reduce((sum, span) => sum + span, 0));
  const within = (row: number, i: number): number => {
    const place = row - (starts[i] as number);
    return place >= 0 && place < (spans[i] as number) ? place : -1;
  };
  const levelAt = (row: number, factor: number): number =>
    within(row, 1 + choices.length + (factors[factor] as Factor).axis);
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

/** A Latin hypercube or a plain random sample. */
export function sampled(
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
    valueAt: (row, factor) => {
      const drawn = factors[factor] as Factor;
      return drawn.atShare(share(row, choices.length + drawn.axis));
    },
  });
}
