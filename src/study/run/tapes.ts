/** The recordings of a study, each made when it is first met, and kept. */
import type { Either } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson } from '../../assessment/index.js';
import type { ReadPlan } from '../plan/read-plan.js';
import type { Alternative } from './alternative.js';
import type { Measure } from './measure.js';
import { type RecordedRow, type Recording, type Refusal, recordingOf, recordingOfRow } from './recording.js';

/** The most tapes of one alternative, not counting its first. */
const mostWays = 400;

/** Further tapes of one alternative, one for each combination of branches that the program takes. */
export interface OtherWays {
  /** The way to begin a block with: the one that answered the most rows of the block before. */
  readonly begin: () => Way | undefined;
  /** Those recorded so far, the one that has answered the most rows first. */
  readonly known: () => readonly Way[];
  /** Records a tape from the spec of a row: `no more` at the limit. */
  readonly record: (spec: unknown) => Recording | 'no more';
  /** Counts the rows that a way has answered; a new one is kept for later rows. */
  readonly answered: (way: Way, rows: number) => void;
  /** The way that answered rows which left a way at this decision; the last one told. */
  readonly after: (way: Way, turn: number) => Way | undefined;
  /** Tells that a way answers rows which left another at this decision. */
  readonly leads: (from: Way, turn: number, to: Way) => void;
}

/** What rows are answered by: a recorded answer or a recorded refusal. */
export type Way = Alternative | Refusal;

export interface Tapes {
  /** The recording for a list of choice indexes; -1 leaves the spec unchanged. */
  readonly first: (indexes: readonly number[]) => Recording;
  /** Records the spec of a row; only what was said of the last one is kept. */
  readonly record: (spec: unknown) => Recording;
  /** What `assess` says of the spec of a row; not asked again for the one that was recorded last. */
  readonly assessed: (spec: unknown) => Either<AssessError, Assessment>;
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

/** Ways in the order of the rows they have answered. */
function waysBy(record: (spec: unknown) => Recording): OtherWays {
  const counts = new Map<Way, number>();
  const exits = new Map<Way, Map<number, Way>>();
  let order: Way[] = [];
  let lately = new Map<Way, number>();
  return {
    begin: () => {
      let [best, most]: [Way | undefined, number] = [undefined, 0];
      for (const [way, rows] of lately) if (rows > most) [best, most] = [way, rows];
      lately = new Map();
      return best;
    },
    known: () => {
      order = order.sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0));
      return order;
    },
    record: (spec) => (order.length > mostWays ? 'no more' : record(spec)),
    answered: (way, rows) => {
      const count = counts.get(way);
      counts.set(way, (count ?? 0) + rows);
      lately.set(way, (lately.get(way) ?? 0) + rows);
      if (count === undefined) order.push(way);
    },
    after: (way, turn) => exits.get(way)?.get(turn),
    leads: (from, turn, to) => {
      const known = exits.get(from);
      if (known === undefined) exits.set(from, new Map([[turn, to]]));
      else known.set(turn, to);
    },
  };
}

export function tapesFor({ factors, choices, combinations, specOf }: ReadPlan, measure: Measure): Tapes {
  const inputs = { paths: factors.map(({ path }) => path), units: factors.map(({ unit }) => unit) };
  const sizes = choices.map((choice) => choice.choices.length);
  const kept = new Map<string, Recording>();
  const ways = new Map<string, OtherWays>();
  let last: { readonly spec: unknown; readonly found: RecordedRow } | undefined;
  const record = (spec: unknown): Recording => {
    const found = recordingOfRow(spec, inputs, measure);
    last = { spec, found };
    return found.recording;
  };
  const assessed = (spec: unknown): Either<AssessError, Assessment> =>
    last !== undefined && last.spec === spec ? last.found.outcome : assessJson(spec);
  const first = (indexes: readonly number[]): Recording =>
    keptIn(kept, indexes.join(), () => recordingOf(specOf(indexes), inputs, measure));
  return {
    first,
    record,
    assessed,
    otherWays: (indexes) => keptIn(ways, indexes.join(), () => waysBy(record)),
    all: () => Array.from({ length: combinations }, (_, n) => first(combination(sizes, n))),
  };
}
