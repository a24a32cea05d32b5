/**
 * A block of rows on one tape, with a guard at every comparison: a row within the band of a limit is decided again in
 * exact decimals; a row for which the program takes another branch is marked, for another tape or for `assess`.
 */

import { figureWith, type Node } from '../../trace/index.js';
import type { Decimal } from '../../units/index.js';
import { compareDecimals } from '../../units/internal.js';
import { type ColumnBound, guardShare } from '../tape/bounds.js';
import { outside, outsideTwo } from '../tape/loops/bound-loops.js';
import { rank } from '../tape/loops/rank-loops.js';
import { below, verdicts as judge } from '../tape/loops/verdict-loops.js';
import type { Operand } from '../tape/steps.js';
import { isVaried, runBlock } from '../tape/tape.js';
import type { Alternative, Share } from './alternative.js';
import { type BlockVerdicts, mark, setMark } from './row-marks.js';

/** The exact figures of a row, by path: the leaves that vary take them. */
export type ExactRow = (row: number) => ReadonlyMap<string, Decimal>;

/** One block: the alternative, its columns with the inputs filled, how many rows, and where the verdicts go. */
interface Block {
  readonly alternative: Alternative;
  readonly columns: readonly Float64Array[];
  readonly rows: number;
  readonly verdicts: BlockVerdicts;
  readonly exactRow: ExactRow;
}

/** A figure as a column: its own, or `spare` filled with it. */
const columnOf = ({ columns, rows }: Block, operand: Operand, spare: Float64Array): Float64Array =>
  isVaried(operand) ? (columns[operand.column] as Float64Array) : spare.fill(operand.value, 0, rows);

/** Which mark a row outside gets: an input outside what it may be cannot be answered by any tape. */
function markOf({ alternative: { inputBounds, tape }, columns }: Block, row: number): number {
  const inside = ({ column, low, high }: ColumnBound): boolean => {
    const x = (columns[column] as Float64Array)[row] as number;
    return x >= low && x <= high;
  };
  return (inputBounds.every(inside) ? 0 : mark.elsewhere) | (tape.bounds.every(inside) ? 0 : mark.otherWay);
}

/** Marks rows with an input out of range or missing, and rows that take another branch or are too near to tell. */
function markOutsiders(block: Block): void {
  const {
    alternative: { allBounds },
    columns,
    rows,
    verdicts,
  } = block;
  const found = (row: number): void => setMark(verdicts, row, markOf(block, row));
  const values = ({ column }: ColumnBound): Float64Array => columns[column] as Float64Array;
  for (let k = 0; k < allBounds.length; k += 2) {
    const [a, b] = [allBounds[k] as ColumnBound, allBounds[k + 1]];
    if (b === undefined) outside(values(a), a.low, a.high, rows, found);
    else outsideTwo(values(a), a.low, a.high, values(b), b.low, b.high, rows, found);
  }
}

/** The share used on a row. */
const usedAt = ({ at, times, plus }: Share, columns: Block['columns'], row: number): number =>
  times * (isVaried(at) ? ((columns[at.column] as Float64Array)[row] as number) : at.value) + plus;

/** A row near a limit: every share near one is decided by its exact load and limit. */
function decideShares({ alternative: { shares }, columns, verdicts, exactRow }: Block, row: number): void {
  setMark(verdicts, row, mark.exact);
  const figures = exactRow(row);
  for (const share of shares) {
    const {
      check: { load, limit },
    } = share;
    const used = usedAt(share, columns, row);
    if (
      Math.abs(used - 1) <= 3 * guardShare &&
      compareDecimals(figureWith(load.why, figures), figureWith(limit.why, figures)) > 0
    )
      verdicts.holds[row] = 0;
  }
}

/** A row near zero of a reserve that has no share. */
function decideReserve({ verdicts, exactRow }: Block, node: Node, row: number): void {
  setMark(verdicts, row, mark.exact);
  const sides = node.kind === 'computed' && node.operation === 'difference' ? node.of : undefined;
  const figures = exactRow(row);
  const side =
    sides === undefined
      ? figureWith(node, figures).comparedTo(0)
      : compareDecimals(figureWith(sides[0] as Node, figures), figureWith(sides[1] as Node, figures));
  if (side < 0) verdicts.holds[row] = 0;
}

function breakTie({ alternative: { shares }, columns, verdicts, exactRow }: Block, row: number): void {
  setMark(verdicts, row, mark.exact);
  const figures = exactRow(row);
  const most = verdicts.most[row] as number;
  const close = shares.flatMap((share, k) => {
    const {
      check: { load, limit },
    } = share;
    return most - usedAt(share, columns, row) <= 2 * guardShare * Math.abs(most)
      ? [{ k, load: figureWith(load.why, figures), limit: figureWith(limit.why, figures) }]
      : [];
  });
  const order = (a: (typeof close)[number], b: (typeof close)[number]): number =>
    compareDecimals(a.load.times(b.limit), b.load.times(a.limit));
  const worst = close.reduce((best, next) => (order(next, best) > 0 ? next : best));
  const tied = close.filter((candidate) => order(candidate, worst) === 0).map(({ k }) => k);
  verdicts.governs[row] = tied[0] ?? worst.k;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}

/** Which check is closest to its limit, and whether it is within: both are read off the shares used. */
function judgeShares(block: Block): void {
  const {
    alternative: { shares },
    rows,
    verdicts,
  } = block;
  const { most, second, governs, holds, fixed } = verdicts;
  while (fixed.length < shares.length) fixed.push(new Float64Array(most.length));
  rank(
    shares.map(({ at, times, plus }, k) => ({ column: columnOf(block, at, fixed[k] as Float64Array), times, plus })),
    most,
    second,
    governs,
    rows,
  );
  if (shares.length > 0)
    judge(
      most,
      second,
      holds,
      guardShare,
      rows,
      (row) => decideShares(block, row),
      (row) => breakTie(block, row),
    );
}

/** Runs the tape over rows whose input columns are filled, and judges every row. */
export function evaluateBlock(
  alternative: Alternative,
  columns: readonly Float64Array[],
  rows: number,
  verdicts: BlockVerdicts,
  exactRow: ExactRow,
): void {
  const block: Block = { alternative, columns, rows, verdicts, exactRow };
  runBlock(alternative.tape, columns, rows);
  verdicts.marks.fill(0, 0, rows);
  verdicts.marked = false;
  verdicts.ties.clear();
  verdicts.holds.fill(alternative.overAnyway ? 0 : 1, 0, rows);
  markOutsiders(block);
  judgeShares(block);
  for (const { node, at, edge } of alternative.reserves)
    below(columnOf(block, at, verdicts.spare), edge, verdicts.holds, rows, (row) => decideReserve(block, node, row));
}
