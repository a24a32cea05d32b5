/** A study plan read against its spec: levers, choices, and the spec of any choice; or the first thing that is wrong with it. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import type { Given } from '../../trace/index.js';
import type { StudyFailure } from '../errors.js';
import { axlesMovedBy, type ChoiceLeaves } from './axles-moved.js';
import type { Factor } from './factors.js';
import type { Axis, ChoiceFactor } from './planned.js';
import { type Choices, readChoices } from './read-choices.js';
import { readLeaves } from './read-leaves.js';
import { readLevers } from './read-levers.js';
import type { Variation } from './vary.js';

export { mostCombinations } from './read-choices.js';

export interface ReadPlan {
  /** What moves: one varied figure each, or several together. */
  readonly axes: readonly Axis[];
  readonly factors: readonly Factor[];
  readonly choices: readonly ChoiceFactor[];
  /** How many combinations of choices there are. */
  readonly combinations: number;
  /** The spec of a combination, as JSON; -1 leaves the spec unchanged. */
  readonly specOf: (indexes: readonly number[]) => unknown;
  /** The spec's own values of the factors. */
  readonly own: readonly number[];
  /** What is to be said of the plan itself, whatever its rows come to. */
  readonly notes: readonly Note[];
}

type Leaves = ReadonlyMap<string, Given>;

/** The leaves of the spec with each choice taken on its own. */
function leavesByChoice(base: unknown, { sets }: Choices): Either<StudyFailure, readonly ChoiceLeaves[]> {
  const all: ChoiceLeaves[] = [];
  for (const { choices, take, changes } of sets)
    for (const index of choices.keys()) {
      const alternative = readLeaves(take(base, index));
      if (isLeft(alternative)) return alternative;
      all.push({ leaves: alternative.right, replaces: changes[index] ?? [] });
    }
  return right(all);
}

/** Leaves of the spec and of every choice, so that a figure that only an alternative has can be varied too. */
function knownLeaves(own: Leaves, choices: readonly ChoiceLeaves[]): Leaves {
  const leaves = new Map(own);
  for (const choice of choices) for (const [path, leaf] of choice.leaves) if (!leaves.has(path)) leaves.set(path, leaf);
  return leaves;
}

/** Reads the variations of a plan against its spec. */
export function readPlan(base: unknown, vary: Readonly<Record<string, Variation>>): Either<StudyFailure, ReadPlan> {
  const entries = Object.entries(vary);
  const choices = readChoices(base, entries);
  if (isLeft(choices)) return choices;
  const written = readLeaves(base);
  if (isLeft(written)) return written;
  const taken = leavesByChoice(base, choices.right);
  if (isLeft(taken)) return taken;
  const leaves = knownLeaves(written.right, taken.right);
  const levers = readLevers(entries, leaves);
  if (isLeft(levers)) return levers;
  const { sets, combinations, specOf } = choices.right;
  return right({
    ...levers.right,
    choices: sets.map(({ name, choices: names }) => ({ name, choices: names })),
    combinations,
    specOf,
    own: levers.right.factors.map(({ path }) => (leaves.get(path) as Given).value.value.toNumber()),
    notes: axlesMovedBy(written.right, leaves, taken.right, levers.right.factors),
  });
}
