/** Whole alternatives and options as sets of choices: their names, and the spec with a choice taken. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { StudyError } from '../errors.js';
import type { ChoiceFactor } from './planned.js';
import { changed } from './spec-paths.js';
import type { Added, AddedOption, Alternatives, Variation } from './vary.js';

/** The most combinations of choices: each has a tape of its own. */
export const mostCombinations = 5_000;

/** A set of choices, one of which is taken. */
export interface ChoiceSet extends ChoiceFactor {
  /** The spec with a choice taken; -1 leaves it unchanged. */
  readonly take: (spec: unknown, index: number) => unknown;
  /** The paths that some choice replaces. */
  readonly touches: readonly string[];
  /** The paths that each choice replaces. */
  readonly changes: readonly (readonly string[])[];
}

/** The choices of a plan: how many combinations there are, and the spec of each. */
export interface Choices {
  readonly sets: readonly ChoiceSet[];
  readonly combinations: number;
  readonly specOf: (indexes: readonly number[]) => unknown;
}

const unusable = (path: string, found: string, needed: string): Either<StudyError, never> =>
  left({ chapter: 'study', tag: 'UnusableVariation', path, found, needed });

function ofAlternatives(name: string, { choices }: Alternatives): ChoiceSet {
  const changes = Object.values(choices);
  return {
    name,
    choices: Object.keys(choices),
    take: (spec, index) => changed(spec, changes[index] ?? {}),
    touches: [...new Set(changes.flatMap((each) => Object.keys(each)))],
    changes: changes.map((each) => Object.keys(each)),
  };
}

const listAt = (part: unknown, keys: readonly string[]): readonly unknown[] | undefined => {
  const found = keys.reduce<unknown>(
    (inner, key) => (typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>)[key] : undefined),
    part,
  );
  return Array.isArray(found) ? found : undefined;
};

/** The spec with one more item: in the list of a built-up trailer, or added to the weight of a weighed one. */
function withOption(spec: unknown, name: string, { weight, at }: AddedOption): unknown {
  const items = listAt(spec, ['trailer', 'curb', 'items']);
  const list = items === undefined ? 'added' : 'items';
  const before = items ?? listAt(spec, ['trailer', 'curb', 'added']) ?? [];
  return changed(spec, { [`trailer.curb.${list}`]: [...before, { name, weight, at }] });
}

const ofOptions = (name: string, { options }: Added): readonly ChoiceSet[] =>
  Object.entries(options).map(([option, added]) => ({
    name: `${name}: ${option}`,
    choices: ['without', 'with'],
    take: (spec, index) => (index === 1 ? withOption(spec, option, added) : spec),
    touches: [],
    changes: [],
  }));

const isWithin = (path: string, other: string): boolean => path === other || path.startsWith(`${other}.`);

/** Two sets that replace one part: which of them would win is nobody's to guess. */
function conflictOf(sets: readonly ChoiceSet[]): Either<StudyError, undefined> {
  for (const [i, set] of sets.entries())
    for (const other of sets.slice(0, i))
      for (const path of set.touches) {
        const both = other.touches.find((theirs) => isWithin(path, theirs) || isWithin(theirs, path));
        if (both !== undefined)
          return unusable(
            set.name,
            both === path ? `${path}, which "${other.name}" replaces too` : `${path} beside ${both} of "${other.name}"`,
            'alternatives that replace different parts, or one set of alternatives for both',
          );
      }
  return right(undefined);
}

/** Reads the alternatives and options of a plan. */
export function readChoices(
  base: unknown,
  vary: readonly (readonly [string, Variation])[],
): Either<StudyError, Choices> {
  const sets = vary.flatMap(([name, variation]) => {
    if (variation.kind === 'alternatives') return [ofAlternatives(name, variation)];
    return variation.kind === 'added' ? ofOptions(name, variation) : [];
  });
  const none = sets.find(({ choices }) => choices.length === 0);
  if (none !== undefined) return unusable(none.name, 'an empty list', 'at least one alternative');
  const conflict = conflictOf(sets);
  if (conflict._tag === 'Left') return conflict;
  const combinations = sets.reduce((product, { choices }) => product * choices.length, 1);
  if (combinations > mostCombinations)
    return left({ chapter: 'study', tag: 'TooManyVariants', count: combinations, most: mostCombinations });
  // Options go on last: an alternative may replace the list that they are added to.
  const order = [...sets.keys()].sort((a, b) => Number(isOption(sets[a])) - Number(isOption(sets[b])));
  return right({
    sets,
    combinations,
    specOf: (indexes) =>
      order.reduce<unknown>((spec, i) => (sets[i] as ChoiceSet).take(spec, indexes[i] as number), base),
  });
}

const isOption = (set: ChoiceSet | undefined): boolean => set?.touches.length === 0;
