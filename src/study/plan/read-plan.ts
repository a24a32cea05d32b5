/** A study plan read against its spec: levers, choices, and the spec of any choice; or the first thing that is wrong with it. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Given } from '../../trace/index.js';
import type { StudyFailure } from '../errors.js';
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
}

/** Leaves of the spec and of every choice on its own, so that a figure that only an alternative has can be varied too. */
function knownLeaves(base: unknown, { sets }: Choices): Either<StudyFailure, ReadonlyMap<string, Given>> {
  const own = readLeaves(base);
  if (isLeft(own)) return own;
  const leaves = new Map(own.right);
  for (const { choices, take } of sets)
    for (const index of choices.keys()) {
      const alternative = readLeaves(take(base, index));
      if (isLeft(alternative)) return alternative;
      for (const [path, leaf] of alternative.right) if (!leaves.has(path)) leaves.set(path, leaf);
    }
  return right(leaves);
}

/** Reads the variations of a plan against its spec. */
export function readPlan(base: unknown, vary: Readonly<Record<string, Variation>>): Either<StudyFailure, ReadPlan> {
  const entries = Object.entries(vary);
  const choices = readChoices(base, entries);
  if (isLeft(choices)) return choices;
  const leaves = knownLeaves(base, choices.right);
  if (isLeft(leaves)) return leaves;
  const levers = readLevers(entries, leaves.right);
  if (isLeft(levers)) return levers;
  const { sets, combinations, specOf } = choices.right;
  return right({
    ...levers.right,
    choices: sets.map(({ name, choices: names }) => ({ name, choices: names })),
    combinations,
    specOf,
    own: levers.right.factors.map(({ path }) => (leaves.right.get(path) as Given).value.value.toNumber()),
  });
}
