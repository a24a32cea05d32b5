/** The recordings of a study, each made when it is first met, and kept. */
import type { ReadPlan } from '../plan/read-plan.js';
import type { Alternative } from './alternative.js';
import type { Measure } from './measure.js';
import { type Recording, type Refusal, recordingOf } from './recording.js';

/** The most tapes of one alternative, not counting its first. */
const mostWays = 96;

/** Further tapes of one alternative, one for each combination of branches that the program takes. */
export interface OtherWays {
  readonly ways: readonly Way[];
  /** Records a tape from the spec of a row: `no more` at the limit. */
  readonly record: (spec: unknown) => Recording | 'no more';
  /** Keeps a tape for later rows. */
  readonly keep: (way: Way) => void;
}

/** What rows are answered by: a recorded answer or a recorded refusal. */
export type Way = Alternative | Refusal;

export interface Tapes {
  /** The recording for a list of choice indexes; -1 leaves the spec unchanged. */
  readonly first: (indexes: readonly number[]) => Recording;
  /** Records any spec; nothing is kept. */
  readonly record: (spec: unknown) => Recording;
  readonly otherWays: (indexes: readonly number[]) => OtherWays;
  /** Every combination of alternatives, or the one spec when there are none. */
  readonly all: () => readonly Recording[];
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
  const inputs = { paths: factors.map(({ path }) => path), units: factors.map(({ unit }) => unit) };
  const sizes = choices.map((choice) => choice.choices.length);
  const kept = new Map<string, Recording>();
  const ways = new Map<string, Way[]>();
  const record = (spec: unknown): Recording => recordingOf(spec, inputs, measure);
  const first = (indexes: readonly number[]): Recording => keptIn(kept, indexes.join(), () => record(specOf(indexes)));
  return {
    first,
    record,
    otherWays: (indexes) => {
      const known = keptIn(ways, indexes.join(), () => []);
      return {
        ways: known,
        record: (spec) => (known.length >= mostWays ? 'no more' : record(spec)),
        keep: (way) => {
          known.push(way);
        },
      };
    },
    all: () => Array.from({ length: combinations }, (_, n) => first(combination(sizes, n))),
  };
}
