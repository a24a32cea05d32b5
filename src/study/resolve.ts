/** A study plan read against its spec: factors, choices, variants, or the first thing that is wrong with it. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { decodeSpec, leavesOf } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import type { Given } from '../trace/index.js';
import { editDistance, nearestKeys } from '../units/internal.js';
import type { ChoiceFactor } from './design.js';
import type { StudyError } from './errors.js';
import { type Factor, factorOf } from './factors.js';
import { changed } from './spec-paths.js';
import { type Measure, type Variant, variantOf } from './variant.js';
import type { Alternatives, Variation } from './vary.js';

/** The most combinations of whole alternatives: each has a tape of its own. */
export const mostVariants = 5_000;

/** The most tapes of one alternative besides its first. */
const mostWays = 24;

export interface OtherWays {
  readonly ways: readonly Variant[];
  /** Records the way of a row: nothing when it has no answer, `no more` when there are ways enough. */
  readonly record: (spec: unknown) => Variant | 'no more' | undefined;
  /** Keeps a way for rows to come. */
  readonly keep: (way: Variant) => void;
}

export interface Resolved {
  readonly factors: readonly Factor[];
  readonly choices: readonly ChoiceFactor[];
  /** The alternative for a list of choice indexes; -1 leaves the spec as it stands. */
  readonly variantOf: (indexes: readonly number[]) => Either<TrailerError, Variant>;
  /** The same alternative recorded where the program goes another way: the tapes met so far, and a new one from the spec of a row. */
  readonly otherWays: (indexes: readonly number[]) => OtherWays;
  /** The spec of an alternative, as JSON. */
  readonly specOf: (indexes: readonly number[]) => unknown;
  /** Every combination of alternatives, or the one spec when there are none. */
  readonly allVariants: () => readonly Either<TrailerError, Variant>[];
  /** The spec's own values of the factors. */
  readonly own: readonly number[];
}

type Problem = TrailerError | StudyError;

/** Leaves of the spec and of every alternative on its own, so that a figure that only an alternative has can be varied too. */
function knownLeaves(
  base: unknown,
  alternatives: readonly (readonly [string, Alternatives])[],
): Either<Problem, ReadonlyMap<string, Given>> {
  const decoded = decodeSpec(base);
  if (isLeft(decoded)) return decoded;
  const leaves = new Map(leavesOf(decoded.right));
  for (const [, { choices }] of alternatives) {
    for (const changes of Object.values(choices)) {
      const variant = decodeSpec(changed(base, changes));
      if (isLeft(variant)) return variant;
      for (const [path, leaf] of leavesOf(variant.right)) if (!leaves.has(path)) leaves.set(path, leaf);
    }
  }
  return right(leaves);
}

function readFactors(
  vary: readonly (readonly [string, Exclude<Variation, Alternatives>])[],
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

/** Reads the variations of a plan. Variants are recorded when they are first met, and kept. */
export function resolve(
  base: unknown,
  vary: Readonly<Record<string, Variation>>,
  measure: Measure,
): Either<Problem, Resolved> {
  const entries = Object.entries(vary);
  const alternatives = entries.flatMap(([name, variation]) =>
    variation.kind === 'alternatives' ? [[name, variation] as const] : [],
  );
  const figures = entries.flatMap(([path, variation]) =>
    variation.kind === 'alternatives' ? [] : [[path, variation] as const],
  );
  for (const [name, { choices }] of alternatives) {
    if (Object.keys(choices).length === 0)
      return left({
        chapter: 'study',
        tag: 'UnusableVariation',
        path: name,
        found: 'no alternatives',
        needed: 'at least one alternative',
      });
  }
  const combinations = alternatives.reduce((count, [, { choices }]) => count * Object.keys(choices).length, 1);
  if (combinations > mostVariants)
    return left({ chapter: 'study', tag: 'TooManyVariants', count: combinations, most: mostVariants });
  const leaves = knownLeaves(base, alternatives);
  if (isLeft(leaves)) return leaves;
  const factors = readFactors(figures, leaves.right);
  if (isLeft(factors)) return factors;
  const inputs = factors.right.map(({ path }) => path);
  const units = factors.right.map(({ unit }) => unit);
  const choices = alternatives.map(([name, { choices: named }]) => ({ name, choices: Object.keys(named) }));
  const specOf = (indexes: readonly number[]): unknown => {
    const changes = indexes.map((index, i) =>
      index < 0 ? {} : (Object.values((alternatives[i] as readonly [string, Alternatives])[1].choices)[index] ?? {}),
    );
    return changes.reduce<unknown>((spec, change) => changed(spec, change), base);
  };
  const kept = new Map<string, Either<TrailerError, Variant>>();
  const keptVariant = (indexes: readonly number[]): Either<TrailerError, Variant> => {
    const key = indexes.join();
    const found = kept.get(key) ?? variantOf(specOf(indexes), inputs, units, measure);
    kept.set(key, found);
    return found;
  };
  const ways = new Map<string, Variant[]>();
  const otherWays = (indexes: readonly number[]): OtherWays => {
    const key = indexes.join();
    const known = ways.get(key) ?? [];
    ways.set(key, known);
    const record = (spec: unknown): Variant | 'no more' | undefined => {
      if (known.length >= mostWays) return 'no more';
      const way = variantOf(spec, inputs, units, measure);
      return isLeft(way) ? undefined : way.right;
    };
    return {
      ways: known,
      record,
      keep: (way) => {
        known.push(way);
      },
    };
  };
  const combination = (place: number): readonly number[] => {
    const indexes: number[] = [];
    let rest = place;
    for (const { choices: named } of [...choices].reverse()) {
      indexes.unshift(rest % named.length);
      rest = Math.floor(rest / named.length);
    }
    return indexes;
  };
  return right({
    factors: factors.right,
    choices,
    specOf,
    variantOf: keptVariant,
    otherWays,
    allVariants: () => Array.from({ length: combinations }, (_, place) => keptVariant(combination(place))),
    own: inputs.map((path) => (leaves.right.get(path) as Given).value.value.toNumber()),
  });
}
