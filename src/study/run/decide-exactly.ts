/** Verdicts and ties that doubles cannot decide, for single rows in exact decimals. */
import type { Node } from '../../trace/index.js';
import { zero } from '../../units/internal.js';
import { guardShare } from '../tape/bounds.js';
import { type AnsweredBlock, type Block, figureAt, usedAt } from './block.js';
import { isAnswered, mark, setMark } from './row-marks.js';
import type { Share } from './shares.js';

/** A row near a limit: every share near one is decided by its exact load and limit. */
export function decideShares(block: AnsweredBlock, row: number): void {
  const { branch, verdicts, exact } = block;
  if (!isAnswered(verdicts, row)) return;
  setMark(verdicts, row, mark.exact);
  for (const share of branch.shares) {
    const { load, limit } = share.check;
    const near = Math.abs(usedAt(block, share, row) - 1) <= 3 * guardShare;
    if (near && exact.order(row, load.why, limit.why) > 0) {
      verdicts.holds[row] = 0;
      return;
    }
  }
}

/** A row near zero of a reserve that has no share. */
export function decideReserve({ verdicts, exact }: Block, node: Node, row: number): void {
  if (!isAnswered(verdicts, row)) return;
  setMark(verdicts, row, mark.exact);
  const [a, b] = node.kind === 'computed' && node.operation === 'difference' ? node.of : [];
  const side = a === undefined || b === undefined ? exact.figure(row, node).comparedTo(zero) : exact.order(row, a, b);
  if (side < 0) verdicts.holds[row] = 0;
}

/** The greatest share of a row, the second greatest, and whose the greatest is. */
function greatestOf(
  block: AnsweredBlock,
  row: number,
): { readonly most: number; readonly second: number; readonly k: number } {
  const { shares } = block.branch;
  let [most, second, k] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (let i = 0; i < shares.length; i += 1) {
    const used = usedAt(block, shares[i] as Share, row);
    if (used > most) {
      second = most;
      most = used;
      k = i;
    } else if (used > second) second = used;
  }
  return { most, second, k };
}

/** A row whose two greatest shares are too near to each other: compared as loads times limits. */
export function breakTie(block: AnsweredBlock, row: number): void {
  const { branch, verdicts, exact } = block;
  if (!isAnswered(verdicts, row)) return;
  setMark(verdicts, row, mark.exact);
  const { most } = greatestOf(block, row);
  const least = most - 2 * guardShare * Math.abs(most);
  let tied: number[] = [];
  for (let k = 0; k < branch.shares.length; k += 1) {
    const share = branch.shares[k] as Share;
    if (usedAt(block, share, row) < least) continue;
    const worst = branch.shares[tied[0] ?? k] as Share;
    const order = worst === share ? 1 : exact.orderOfShares(row, share.check, worst.check);
    if (order > 0) tied = [k];
    else if (order === 0) tied.push(k);
  }
  verdicts.governs[row] = tied[0] ?? 0;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}

/** A row on the bound of a decision: what is settled for the rows inside of it is asked again, of every share and reserve. */
export function judgeOnABound(block: AnsweredBlock, row: number): void {
  const { branch, verdicts } = block;
  if (branch.shares.length > 0) {
    const { most, second, k } = greatestOf(block, row);
    if (most > 1 + 2 * guardShare) verdicts.holds[row] = 0;
    else if (most > 1 - 2 * guardShare) decideShares(block, row);
    if (most - second <= guardShare * Math.abs(most)) breakTie(block, row);
    else verdicts.governs[row] = k;
  }
  for (const { node, at, edge } of branch.pressing) {
    const left = figureAt(block, at, row);
    if (left < -edge) verdicts.holds[row] = 0;
    else if (left <= edge) decideReserve(block, node, row);
  }
}
