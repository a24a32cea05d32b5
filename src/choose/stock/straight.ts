/** Demands as straight lines in the fronts of the pieces: most of them are moments, and those need no working to be asked again. */
import { type Demands, nearZero } from '../remedies/demands.js';
import type { DeckJob, Row } from './rows.js';

/** One demand: what it is with every piece at the front of the deck, and what an inch of each piece changes. */
interface Line {
  readonly demand: number;
  readonly start: number;
  readonly perInch: readonly number[];
}

/** The demands of a job: those that go straight over the whole deck, and the others. */
export interface Straightened {
  readonly lines: readonly Line[];
  readonly others: readonly number[];
}

/** A demand is linear when its values at the far corner and at the middle are those its slopes predict. */
function lineOf(demands: Demands, demand: number, { front, rear, lengths }: DeckJob): Line | undefined {
  const start = demands.at(
    demand,
    lengths.map(() => front),
  );
  const rooms = lengths.map((length) => Math.max(1, rear - front - length));
  const perInch = rooms.map(
    (room, i) =>
      (demands.at(
        demand,
        rooms.map((_, j) => (j === i ? front + room : front)),
      ) -
        start) /
      room,
  );
  const misses = [0.5, 1].map((share) => {
    const there = rooms.map((room) => front + share * room);
    const foreseen = rooms.reduce((sum, room, i) => sum + share * room * (perInch[i] as number), start);
    return Math.abs(demands.at(demand, there) - foreseen);
  });
  return misses.every((miss) => miss <= nearZero / 2) ? { demand, start, perInch } : undefined;
}

/** Sorts the demands by whether they go straight. */
export function straightened(demands: Demands, job: DeckJob): Straightened {
  const lines: Line[] = [];
  const others: number[] = [];
  for (let demand = 0; demand < demands.count; demand += 1) {
    const line = lineOf(demands, demand, job);
    if (line === undefined) others.push(demand);
    else lines.push(line);
  }
  return { lines, others };
}

/** A straight demand at some fronts. */
export const onLine = ({ start, perInch }: Line, fronts: readonly number[], front: number): number =>
  fronts.reduce((sum, at, i) => sum + (at - front) * (perInch[i] as number), start);

/** The steps of a row at which the straight demands are met that are not left out; undefined when there are none. */
export function stretchOnLines(
  lines: readonly Line[],
  { fronts, room }: Row,
  front: number,
  leftOut: (demand: number) => boolean,
): readonly [from: number, to: number] | undefined {
  let [from, to] = [0, room];
  for (const line of lines) {
    if (leftOut(line.demand)) continue;
    const start = onLine(line, fronts, front) + nearZero;
    const slope = line.perInch.reduce((a, b) => a + b, 0);
    if (Math.abs(slope) < 1e-12) {
      if (start < 0) return undefined;
    } else if (slope > 0) from = Math.max(from, Math.ceil(-start / slope));
    else to = Math.min(to, Math.floor(-start / slope));
    if (from > to) return undefined;
  }
  return [from, to];
}
