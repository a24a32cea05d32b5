/**
 * Rows that take another branch than their alternative: on the tapes made so far, then on new ones.
 *
 * Two rows that leave a recorded program at the same decision go on alike, as far as the next decision that parts them. So a row is
 * sent where rows that left there before were answered, and from there on again; all tapes are tried only where nobody left before.
 */
import type { Leaving } from './row-groups.js';
import type { OnTape } from './rows-on-tape.js';
import type { OtherWays, Way } from './tapes.js';

/** How rows are run on a tape, and the spec of one of them. */
export interface RowRun {
  readonly run: (way: Way, rows: readonly number[]) => OnTape;
  readonly specAt: (row: number) => unknown;
}

/** Tapes that rows are sent to, one after the other, before all are tried. */
const mostSent = 400;

/** Where a row left: a way, and the place of a decision on it. */
interface Exit {
  readonly way: Way;
  readonly turn: number;
}

/** The rows of one block while they look for their tape. */
class Search {
  readonly alone: number[] = [];
  exactRows = 0;
  private readonly queue = new Map<Way, number[]>();
  private lost = new Map<number, Exit>();

  constructor(
    private readonly ways: OtherWays,
    private readonly rowRun: RowRun,
  ) {}

  /** Sends rows on from where they left; those that nobody went before are lost. */
  leave(way: Way, leaving: Leaving): void {
    for (const [turn, rows] of leaving) {
      const to = this.ways.after(way, turn);
      if (to === undefined) for (const row of rows) this.lost.set(row, { way, turn });
      else this.send(to, rows);
    }
  }

  private send(to: Way, rows: readonly number[]): void {
    const waiting = this.queue.get(to);
    if (waiting === undefined) this.queue.set(to, [...rows]);
    else waiting.push(...rows);
  }

  /** Runs the rows that were sent somewhere, until all are answered or lost. */
  follow(): void {
    for (let sent = 0; this.queue.size > 0; sent += 1) {
      const [[way, rows]] = this.queue as unknown as [[Way, number[]]];
      this.queue.delete(way);
      if (sent < mostSent) this.leave(way, this.runOn(way, rows));
      else for (const row of rows) this.lost.set(row, { way, turn: -1 });
    }
  }

  /** Tries all tapes for the lost rows, then records the first of them, until none is left. */
  find(): readonly number[] {
    for (const way of this.ways.known()) if (this.lost.size > 0) this.tryLost(way);
    while (this.lost.size > 0) {
      const [row] = this.lost.keys() as unknown as [number];
      const way = this.ways.record(this.rowRun.specAt(row));
      if (way === 'no more') break;
      if (way.kind !== 'unreadable') this.tryLost(way);
      // A spec that cannot be read has no tape.
      if (this.lost.delete(row)) this.alone.push(row);
    }
    return [...this.alone, ...this.lost.keys()];
  }

  /** Runs all lost rows on a tape; those it answers were not lost, and it is told for the next ones. */
  private tryLost(way: Way): void {
    const rows = [...this.lost.keys()];
    const left = new Set([...this.runOn(way, rows).values()].flat());
    for (const row of rows) {
      if (left.has(row)) continue;
      const exit = this.lost.get(row);
      if (exit !== undefined) this.ways.leads(exit.way, exit.turn, way);
      this.lost.delete(row);
    }
  }

  private runOn(way: Way, rows: readonly number[]): Leaving {
    const { otherWay, exactRows } = this.rowRun.run(way, rows);
    let left = 0;
    for (const some of otherWay.values()) left += some.length;
    if (left < rows.length) this.ways.answered(way, rows.length - left);
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
  search.follow();
  return { rest: search.find(), exactRows: search.exactRows };
}
