/**
 * Rows that take another branch than their alternative: on the tapes made so far, then on new ones.
 *
 * Two rows that leave a recorded program at the same decision go on alike, as far as the next decision that parts them. So a row is
 * sent where rows that left there before were answered, and from there on again. Where nobody left before, one row is tried on every
 * tape, and recorded if none answers it; the others that left there follow it.
 */
import { type Leaving, leavingRows } from './row-groups.js';
import type { OnTape } from './rows-on-tape.js';
import type { OtherWays, Way } from './tapes.js';

/** How rows are run on a tape, and the spec of one of them. */
export interface RowRun {
  readonly run: (way: Way, rows: readonly number[]) => OnTape;
  readonly specAt: (row: number) => unknown;
}

/** Tapes that rows are sent to, one after the other, before they are tried on all: a row that is sent further goes in a circle. */
const mostSent = 12;

/** Rows that wait for a way, and how many they were sent to before. */
interface Waiting {
  readonly rows: number[];
  sent: number;
}

/** Rows that left a way at the same decision, where nobody left before. */
interface Lost {
  readonly way: Way;
  readonly turn: number;
  readonly rows: number[];
}

/** The rows of one block while they look for their tape. */
class Search {
  /** Rows to be assessed one by one. */
  readonly alone: number[] = [];
  exactRows = 0;
  private readonly queue = new Map<Way, Waiting>();
  private readonly lost: Lost[] = [];

  constructor(
    private readonly ways: OtherWays,
    private readonly rowRun: RowRun,
  ) {}

  /** Sends rows on from where they left. */
  leave(way: Way, leaving: Leaving, sent = 0): void {
    for (const [turn, rows] of leaving) {
      const to = sent < mostSent ? this.ways.after(way, turn) : undefined;
      if (to !== undefined) this.send(to, rows, sent + 1);
      else this.lose(way, turn, rows);
    }
  }

  private lose(way: Way, turn: number, rows: readonly number[]): void {
    const others = this.lost.find((each) => each.way === way && each.turn === turn);
    if (others === undefined) this.lost.push({ way, turn, rows: [...rows] });
    else for (const row of rows) others.rows.push(row);
  }

  private send(to: Way, rows: readonly number[], sent: number): void {
    const waiting = this.queue.get(to);
    if (waiting === undefined) this.queue.set(to, { rows: [...rows], sent });
    else {
      for (const row of rows) waiting.rows.push(row);
      waiting.sent = Math.max(waiting.sent, sent);
    }
  }

  /** Runs the rows that were sent somewhere, then looks for the lost ones, until all have an answer or are alone. */
  all(): void {
    for (;;) {
      const [next] = this.queue;
      if (next === undefined) {
        const lost = this.lost.pop();
        if (lost === undefined) return;
        this.find(lost);
        continue;
      }
      const [way, { rows, sent }] = next;
      this.queue.delete(way);
      this.leave(way, this.runOn(way, rows), sent);
    }
  }

  /** Finds the way of the first of these rows, or records it, and sends the others after it. */
  private find({ way: from, turn, rows: [row, ...others] }: Lost): void {
    if (row === undefined) return;
    const found = this.ways.known().find((way) => way !== from && this.answers(way, row)) ?? this.recorded(row);
    if (found === 'no more') this.tryAll([row, ...others]);
    else if (found === undefined) {
      this.alone.push(row);
      if (others.length > 0) this.lose(from, turn, others);
    } else {
      this.ways.leads(from, turn, found);
      if (others.length > 0) this.send(found, others, 0);
    }
  }

  /** A new way that answers a row; none for a spec that cannot be read. */
  private recorded(row: number): Way | 'no more' | undefined {
    const way = this.ways.record(this.rowRun.specAt(row));
    if (way === 'no more') return way;
    return way.kind !== 'unreadable' && this.answers(way, row) ? way : undefined;
  }

  /** At the limit of tapes: rows on all there are, the rest one by one. */
  private tryAll(rows: readonly number[]): void {
    let rest = rows;
    for (const way of this.ways.known()) if (rest.length > 0) rest = [...this.runOn(way, rest).values()].flat();
    this.alone.push(...rest);
  }

  private answers(way: Way, row: number): boolean {
    return this.runOn(way, [row]).size === 0;
  }

  private runOn(way: Way, rows: readonly number[]): Leaving {
    const { otherWay, exactRows } = this.rowRun.run(way, rows);
    const answered = rows.length - leavingRows(otherWay);
    if (answered > 0) this.ways.answered(way, answered);
    this.exactRows += exactRows;
    return otherWay;
  }
}

/** Runs rows that left the first tape on every branch they may take; returns those left to be assessed one by one, and how many were asked in decimals. */
export function onOtherWays(
  first: Way,
  leaving: Leaving,
  ways: OtherWays,
  rowRun: RowRun,
): { readonly rest: readonly number[]; readonly exactRows: number } {
  const search = new Search(ways, rowRun);
  search.leave(first, leaving);
  search.all();
  return { rest: search.alone, exactRows: search.exactRows };
}
