/** A study plan read against its spec: factors, choices, and the spec of any choice; or the first thing that is wrong with it. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { decodeSpec, leavesOf } from '../../spec/index.js';
import type { Given } from '../../trace/index.js';
import { editDistance, nearestKeys } from '../../units/internal.js';
import type { StudyError, StudyFailure } from '../errors.js';
import { type Factor, factorOf } from './factors.js';
import type { ChoiceFactor } from './planned.js';
import { changed } from './spec-paths.js';
import type { Alternatives, Variation } from './vary.js';

/** The most combinations of whole alternatives: each has a tape of its own. */
export const mostCombinations = 5_000;

export interface ReadPlan {
  readonly factors: readonly Factor[];
  readonly choices: readonly ChoiceFactor[];
  /** How many combinations of whole alternatives there are. */
  readonly combinations: number;
  /** The spec of a combination, as JSON; -1 leaves the spec unchanged. */
  readonly specOf: (indexes: readonly number[]) => unknown;
  /** The spec's own values of the factors. */
  readonly own: readonly number[];
}

type Entry<V extends Variation> = readonly [string, V];
type Problem = StudyFailure | StudyError;

/** Leaves of the spec and of every alternative on its own, so that a figure that only an alternative has can be varied too. */
function knownLeaves(
  base: unknown,
  alternatives: readonly Entry<Alternatives>[],
): Either<Problem, ReadonlyMap<string, Given>> {
  const decoded = decodeSpec(base);
  if (isLeft(decoded)) return decoded;
  const leaves = new Map(leavesOf(decoded.right));
  for (const changes of alternatives.flatMap(([, { choices }]) => Object.values(choices))) {
    const alternative = decodeSpec(changed(base, changes));
    if (isLeft(alternative)) return alternative;
    for (const [path, leaf] of leavesOf(alternative.right)) if (!leaves.has(path)) leaves.set(path, leaf);
  }
  return right(leaves);
}

function readFactors(
  vary: readonly Entry<Exclude<Variation, Alternatives>>[],
  leaves: ReadonlyMap<string, Given>,
): Either<StudyError, readonly Factor[]> {
  const factors: Factor[] = [];
  for (const [path, variation] of vary) {
    const leaf = leaves.get(path);
    if (leaf === undefined)
      return left({
        chapter: 'study',
        tag: 'UnknownPath',
        path,
        nearest: nearestKeys([...leaves.keys()], (other) => editDistance(path, other)),
      });
    const factor = factorOf(path, variation, leaf);
    if (isLeft(factor)) return factor;
    factors.push(factor.right);
  }
  return right(factors);
}

/** How many combinations there are; Left when some variation has none, or when there are too many. */
function countCombinations(alternatives: readonly Entry<Alternatives>[]): Either<StudyError, number> {
  const none = alternatives.find(([, { choices }]) => Object.keys(choices).length === 0);
  if (none !== undefined)
    return left({
      chapter: 'study',
      tag: 'UnusableVariation',
      path: none[0],
      found: 'an empty list',
      needed: 'at least one alternative',
    });
  const count = alternatives.reduce((product, [, { choices }]) => product * Object.keys(choices).length, 1);
  return count > mostCombinations
    ? left({ chapter: 'study', tag: 'TooManyVariants', count, most: mostCombinations })
    : right(count);
}

/** Reads the variations of a plan against its spec. */
export function readPlan(base: unknown, vary: Readonly<Record<string, Variation>>): Either<Problem, ReadPlan> {
  const entries = Object.entries(vary);
  const alternatives = entries.flatMap(([name, variation]) =>
    variation.kind === 'alternatives' ? [[name, variation] as const] : [],
  );
  const figures = entries.flatMap(([path, variation]) =>
    variation.kind === 'alternatives' ? [] : [[path, variation] as const],
  );
  const combinations = countCombinations(alternatives);
  if (isLeft(combinations)) return combinations;
  const leaves = knownLeaves(base, alternatives);
  if (isLeft(leaves)) return leaves;
  const factors = readFactors(figures, leaves.right);
  if (isLeft(factors)) return factors;
  const changesOf = (index: number, i: number): Readonly<Record<string, unknown>> =>
    Object.values(alternatives[i]?.[1].choices ?? {})[index] ?? {};
  return right({
    factors: factors.right,
    choices: alternatives.map(([name, { choices }]) => ({ name, choices: Object.keys(choices) })),
    combinations: combinations.right,
    specOf: (indexes) => indexes.map(changesOf).reduce<unknown>(changed, base),
    own: factors.right.map(({ path }) => (leaves.right.get(path) as Given).value.value.toNumber()),
  });
}
