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

/** A point: the index of each choice, and the level of each factor (its index, or its share of a distribution, or -1 for the spec's own value). */
export interface PlannedDesign {
  readonly count: number;
  /** Choices vary slowest, then the factors in the order they were given, the last one fastest. */
  readonly choiceAt: (row: number, choice: number) => number;
  /** The figure of a factor on a row, as a double. */
  readonly valueAt: (row: number, factor: number) => number;
  /** The level index behind it, when the design uses exact levels; -1 otherwise. */
  readonly levelAt: (row: number, factor: number) => number;
}

function grid(choices: readonly ChoiceFactor[], factors: readonly Factor[]): PlannedDesign {
  const sizes = [...choices.map((choice) => choice.choices.length), ...factors.map(({ levels }) => levels.length)];
  const strides = sizes.map((_, i) => sizes.slice(i + 1).reduce((product, size) => product * size, 1));
  const doubles = factors.map(({ levels }) => levels.map((level) => level.toNumber()));
  const place = (row: number, i: number): number => Math.floor(row / (strides[i] as number)) % (sizes[i] as number);
  const levelAt = (row: number, factor: number): number => place(row, choices.length + factor);
  return {
    count: sizes.reduce((product, size) => product * size, 1),
    choiceAt: place, levelAt,
    valueAt: (row, factor) => (doubles[factor] as number[])[levelAt(row, factor)] as number,
  };
}

function oneByOne(choices: readonly ChoiceFactor[], factors: readonly Factor[], own: readonly number[]): PlannedDesign {
  const spans = [1, ...choices.map((choice) => choice.choices.length), ...factors.map(({ levels }) => levels.length)];
  const starts = spans.map((_, i) => spans.slice(0, i).reduce((sum, span) => sum + span, 0));
  const doubles = factors.map(({ levels }) => levels.map((level) => level.toNumber()));
  const within = (row: number, i: number): number => {
    const place = row - (starts[i] as number);
    return place >= 0 && place < (spans[i] as number) ? place : -1;
  };
  const levelAt = (row: number, factor: number): number => within(row, 1 + choices.length + factor);
  return {
    count: spans.reduce((sum, span) => sum + span, 0),
    choiceAt: (row, choice) => within(row, 1 + choice), levelAt,
    valueAt: (row, factor) => { const level = levelAt(row, factor); return level < 0 ? (own[factor] as number) : ((doubles[factor] as number[])[level] as number); },
  };
}

function sampled(design: Extract<Design, { seed: number }>, choices: readonly ChoiceFactor[], factors: readonly Factor[]): PlannedDesign {
  const { runs, seed } = design;
  const share = (row: number, k: number): number =>
    design.kind === 'monte carlo' ? uniformAt(seed, row, k) : (shuffledPlace(seed, k, row, runs) + uniformAt(seed, row, k)) / runs;
  return {
    count: runs,
    choiceAt: (row, choice) => { const size = (choices[choice] as ChoiceFactor).choices.length; return Math.min(size - 1, Math.floor(share(row, choice) * size)); },
    levelAt: () => -1,
    valueAt: (row, factor) => (factors[factor] as Factor).atShare(share(row, choices.length + factor)),
  };
}

/** Plans a design. `own` are the spec's own values of the factors. */
export function plan(design: Design, choices: readonly ChoiceFactor[], factors: readonly Factor[], own: readonly number[]): PlannedDesign {
  switch (design.kind) {
    case 'grid': return grid(choices, factors);
    case 'one at a time': return oneByOne(choices, factors, own);
    case 'latin hypercube':
    case 'monte carlo': return sampled(design, choices, factors);
  }
}
