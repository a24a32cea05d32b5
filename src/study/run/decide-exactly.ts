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

/** A row whose two greatest shares are too near to each other: compared as loads times limits. */
export function breakTie(block: AnsweredBlock, row: number): void {
  const { branch, verdicts, exact } = block;
  if (!isAnswered(verdicts, row)) return;
  setMark(verdicts, row, mark.exact);
  const used = branch.shares.map((share) => usedAt(block, share, row));
  const most = Math.max(...used);
  const near = used.flatMap((share, k) => (most - share <= 2 * guardShare * Math.abs(most) ? [k] : []));
  const [only, ...others] = near;
  if (only === undefined) return;
  if (others.length === 0) {
    verdicts.governs[row] = only;
    return;
  }
  const close = near.map((k) => ({ k, ...(branch.shares[k] as Share).check }));
  const order = (a: (typeof close)[number], b: (typeof close)[number]): number =>
    exact.orderOfShares(row, a.load.why, a.limit.why, b.load.why, b.limit.why);
  const worst = close.reduce((best, next) => (order(next, best) > 0 ? next : best));
  const tied = close.filter((candidate) => order(candidate, worst) === 0).map(({ k }) => k);
  verdicts.governs[row] = tied[0] ?? worst.k;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}

/** A row on the bound of a decision: what is settled for the rows inside of it is asked again, of every share and reserve. */
export function judgeOnABound(block: AnsweredBlock, row: number): void {
  const { branch, verdicts } = block;
  if (branch.shares.length > 0) {
    const most = Math.max(...branch.shares.map((share) => usedAt(block, share, row)));
    if (most > 1 + 2 * guardShare) verdicts.holds[row] = 0;
    else if (most > 1 - 2 * guardShare) decideShares(block, row);
    breakTie(block, row);
  }
  for (const { node, at, edge } of branch.pressing) {
    const left = figureAt(block, at, row);
    if (left < -edge) verdicts.holds[row] = 0;
    else if (left <= edge) decideReserve(block, node, row);
  }
}
