/**
 * A block of rows on one tape, with a guard at every comparison: a row within the band of a limit is decided again in
 * exact decimals; a row for which the program takes another branch is marked, for another tape or for `assess`.
 */
import { guardShare } from '../tape/bounds.js';
import type { Share } from '../tape/loops/columns.js';
import { rank } from '../tape/loops/rank-loops.js';
import { below, verdicts as judge, judgeFour } from '../tape/loops/verdict-loops.js';
import { isVaried, runBlock } from '../tape/tape.js';
import { type AnsweredBlock, type Block, columnOf } from './block.js';
import type { Branch } from './branch.js';
import { breakTie, decideReserve, decideShares, judgeOnABound } from './decide-exactly.js';
import { ExactRows, type FiguresOf } from './exact-rows.js';
import { markOutsiders } from './mark-rows.js';
import { type BlockVerdicts, mark } from './row-marks.js';
import type { Way } from './tapes.js';

/** The columns of the shares that may be the greatest, as the loops take them. */
function rankedOf({ branch: { shares, ranked }, ...block }: AnsweredBlock): readonly Share[] {
  const { fixed, most } = block.verdicts;
  while (fixed.length < ranked) fixed.push(new Float64Array(most.length));
  return shares.slice(0, ranked).map(({ at, times, plus }, k) => ({
    column: isVaried(at)
      ? (block.columns[at.column] as Float64Array)
      : (fixed[k] as Float64Array).fill(at.value, 0, block.rows),
    times,
    plus,
  }));
}

/** Which check is closest to its limit, and whether it is within: both are read off the shares used, in one loop where there are up to four. */
function judgeShares(block: AnsweredBlock, waits: (row: number) => boolean): void {
  const { branch, rows, verdicts } = block;
  const { most, second, governs, holds } = verdicts;
  const held = branch.overAnyway ? 0 : 1;
  const nearLimit = (row: number): void => {
    if (!waits(row)) decideShares(block, row);
  };
  const nearTie = (row: number): void => {
    if (!waits(row)) breakTie(block, row);
  };
  const shares = rankedOf(block);
  const [a] = shares;
  if (a === undefined) holds.fill(held, 0, rows);
  else if (shares.length > 4) {
    rank(shares, most, second, governs, rows);
    judge(most, second, holds, held, guardShare, rows, nearLimit, nearTie);
  } else {
    const never: Share = { column: a.column, times: 0, plus: Number.NEGATIVE_INFINITY };
    const [, b = never, c = never, d = never] = shares;
    judgeFour([a, b, c, d], governs, holds, held, guardShare, rows, nearLimit, nearTie);
  }
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
  const someOnABound = verdicts.marked;
  const onABound = (row: number): boolean => someOnABound && verdicts.marks[row] === mark.exact;
  judgeShares(block, onABound);
  for (const { node, at, edge } of way.reserves)
    below(columnOf(block, at, verdicts.spare), edge, verdicts.holds, rows, (row) => decideReserve(block, node, row));
  if (someOnABound) for (let row = 0; row < rows; row += 1) if (onABound(row)) judgeOnABound(block, row);
}
