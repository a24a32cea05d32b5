/**
 * A block of rows on one tape, with a guard at every comparison: a row within the band of a limit is decided again in
 * exact decimals; a row for which the program takes another branch is marked, for another tape or for `assess`.
 */
import { guardShare } from '../tape/bounds.js';
import { rank } from '../tape/loops/rank-loops.js';
import { below, verdicts as judge } from '../tape/loops/verdict-loops.js';
import { runBlock } from '../tape/tape.js';
import { type AnsweredBlock, type Block, columnOf } from './block.js';
import type { Branch } from './branch.js';
import { breakTie, decideReserve, decideShares } from './decide-exactly.js';
import { ExactRows, type FiguresOf } from './exact-rows.js';
import { markOutsiders } from './mark-rows.js';
import type { BlockVerdicts } from './row-marks.js';
import type { Way } from './tapes.js';

/** Which check is closest to its limit, and whether it is within: both are read off the shares used. */
function judgeShares(block: AnsweredBlock): void {
  const {
    branch: { shares },
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

/** Runs the tape over rows whose input columns are filled, and marks those it does not answer. */
function runBranch<B extends Branch>(
  branch: B,
  columns: readonly Float64Array[],
  rows: number,
  verdicts: BlockVerdicts,
  figuresOf: FiguresOf,
): Block & { readonly branch: B } {
  const block = { branch, columns, rows, verdicts, exact: new ExactRows(branch.varies, figuresOf, branch.memo) };
  runBlock(branch.tape, columns, rows);
  verdicts.marks.fill(0, 0, rows);
  verdicts.marked = false;
  verdicts.ties.clear();
  markOutsiders(block);
  return block;
}

/** Runs a block on its tape and judges every row; a row that is refused has no verdict. */
export function evaluateBlock(
  way: Way,
  columns: readonly Float64Array[],
  rows: number,
  verdicts: BlockVerdicts,
  figuresOf: FiguresOf,
): void {
  if (way.kind === 'refused') {
    runBranch(way, columns, rows, verdicts, figuresOf);
    return;
  }
  const block = runBranch(way, columns, rows, verdicts, figuresOf);
  verdicts.holds.fill(way.overAnyway ? 0 : 1, 0, rows);
  judgeShares(block);
  for (const { node, at, edge } of way.reserves)
    below(columnOf(block, at, verdicts.spare), edge, verdicts.holds, rows, (row) => decideReserve(block, node, row));
}
