/** The recorded alternatives of a study, each recorded when it is first met, and kept. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { StudyFailure } from '../errors.js';
import type { ReadPlan } from '../plan/read-plan.js';
import { type Alternative, alternativeOf } from './alternative.js';
import type { Measure } from './measure.js';

/** The most tapes of one alternative, not counting its first. */
const mostWays = 24;

/** Further tapes of one alternative, one for each combination of branches that the program takes. */
export interface OtherWays {
  readonly ways: readonly Alternative[];
  /** Records a tape from the spec of a row: `undefined` when it has no answer, `no more` at the limit. */
  readonly record: (spec: unknown) => Alternative | 'no more' | undefined;
  /** Keeps a tape for later rows. */
  readonly keep: (way: Alternative) => void;
}

export interface Tapes {
  /** The alternative for a list of choice indexes; -1 leaves the spec unchanged. */
  readonly alternativeOf: (indexes: readonly number[]) => Either<StudyFailure, Alternative>;
  readonly otherWays: (indexes: readonly number[]) => OtherWays;
  /** Every combination of alternatives, or the one spec when there are none. */
  readonly all: () => readonly Either<StudyFailure, Alternative>[];
}

/** The entry of a map; made and kept on first use. */
function keptIn<V>(map: Map<string, V>, key: string, make: () => V): V {
  const found = map.get(key);
  if (found !== undefined) return found;
  const made = make();
  map.set(key, made);
  return made;
}

/** The indexes of the n-th combination, the last choice fastest. */
function combination(sizes: readonly number[], n: number): readonly number[] {
  const indexes: number[] = [];
  let rest = n;
  for (const size of [...sizes].reverse()) {
    indexes.unshift(rest % size);
    rest = Math.floor(rest / size);
  }
  return indexes;
}

export function tapesFor({ factors, choices, combinations, specOf }: ReadPlan, measure: Measure): Tapes {
  const inputs = factors.map(({ path }) => path);
  const units = factors.map(({ unit }) => unit);
  const sizes = choices.map((choice) => choice.choices.length);
  const kept = new Map<string, Either<StudyFailure, Alternative>>();
  const ways = new Map<string, Alternative[]>();
  const record = (spec: unknown): Either<StudyFailure, Alternative> => alternativeOf(spec, inputs, units, measure);
  const first = (indexes: readonly number[]): Either<StudyFailure, Alternative> =>
    keptIn(kept, indexes.join(), () => record(specOf(indexes)));
  return {
    alternativeOf: first,
    otherWays: (indexes) => {
      const known = keptIn(ways, indexes.join(), () => []);
      return {
        ways: known,
        record: (spec) => {
          if (known.length >= mostWays) return 'no more';
          const way = record(spec);
          return isLeft(way) ? undefined : way.right;
        },
        keep: (way) => {
          known.push(way);
        },
      };
    },
    all: () => Array.from({ length: combinations }, (_, n) => first(combination(sizes, n))),
  };
}
