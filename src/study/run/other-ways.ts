/** Rows that take another branch than their alternative: on the tapes made so far, then on new ones. */
import type { OnTape } from './rows-on-tape.js';
import type { OtherWays, Way } from './tapes.js';

/** How rows are run on a tape, and the spec of one of them. */
export interface RowRun {
  readonly run: (way: Way, rows: readonly number[]) => OnTape;
  readonly specAt: (row: number) => unknown;
}

/** Runs rows on every branch they may take; returns those left to be assessed one by one, and how many were asked in decimals. */
export function onOtherWays(
  rows: readonly number[],
  ways: OtherWays,
  { run, specAt }: RowRun,
): { readonly rest: readonly number[]; readonly exactRows: number } {
  let rest = rows;
  let exactRows = 0;
  const runOn = (way: Way): number => {
    const before = rest.length;
    const done = run(way, rest);
    rest = done.otherWay;
    exactRows += done.exactRows;
    return before - rest.length;
  };
  for (const way of ways.known()) if (rest.length > 0) ways.answered(way, runOn(way));
  const alone: number[] = [];
  while (rest.length > 0) {
    const row = rest[0] as number;
    const way = ways.record(specAt(row));
    if (way === 'no more') break;
    const answered = way.kind === 'unreadable' ? 0 : runOn(way);
    if (way.kind !== 'unreadable' && answered > 0) ways.answered(way, answered);
    // A spec that cannot be read has no tape.
    if (rest[0] !== row) continue;
    alone.push(row);
    rest = rest.slice(1);
  }
  return { rest: [...alone, ...rest], exactRows };
}
