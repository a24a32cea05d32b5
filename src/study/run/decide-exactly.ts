/** Verdicts and ties that doubles cannot decide, for single rows in exact decimals. */
import type { Node } from '../../trace/index.js';
import { compareDecimals, zero } from '../../units/internal.js';
import { guardShare } from '../tape/bounds.js';
import { type AnsweredBlock, type Block, usedAt } from './block.js';
import { isAnswered, mark, setMark } from './row-marks.js';

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

/** A row whose two greatest shares are too near to each other: compared as loads times limits. */
export function breakTie(block: AnsweredBlock, row: number): void {
  const { branch, verdicts, exact } = block;
  if (!isAnswered(verdicts, row)) return;
  setMark(verdicts, row, mark.exact);
  const most = verdicts.most[row] as number;
  const close = branch.shares.flatMap((share, k) => {
    const { load, limit } = share.check;
    return most - usedAt(block, share, row) <= 2 * guardShare * Math.abs(most)
      ? [{ k, load: exact.figure(row, load.why), limit: exact.figure(row, limit.why) }]
      : [];
  });
  const order = (a: (typeof close)[number], b: (typeof close)[number]): number =>
    compareDecimals(a.load.times(b.limit), b.load.times(a.limit));
  const worst = close.reduce((best, next) => (order(next, best) > 0 ? next : best));
  const tied = close.filter((candidate) => order(candidate, worst) === 0).map(({ k }) => k);
  verdicts.governs[row] = tied[0] ?? worst.k;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}
