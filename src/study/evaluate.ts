/**
 * A block of rows on one tape, with a guard at every comparison: a row that stands within the band of a limit is decided again
 * with exact decimals, and a row for which the program would have gone another way is marked, for another tape or for `assess` itself.
 */
import { compareDecimals } from '../units/internal.js';
import { decimalReading, holdsFor, type Node, readNode } from '../trace/index.js';
import type { Decimal } from '../units/index.js';
import type { Operand } from './steps.js';
import { isVaried, runBlock } from './tape.js';
import type { Guarded, Variant } from './variant.js';
import { type BlockVerdicts, mark, setMark } from './verdicts.js';

/** The share of a limit within which a double is not trusted to know its side. */
export const guardShare = 1e-9;

/** The exact figures of a row, by path: the leaves that vary take them. */
export type ExactRow = (row: number) => ReadonlyMap<string, Decimal>;

/** One block: the variant, its columns with the inputs filled, how many rows, and where the verdicts go. */
interface Block { readonly variant: Variant; readonly columns: readonly Float64Array[]; readonly rows: number; readonly verdicts: BlockVerdicts; readonly exactRow: ExactRow }

/** A figure as a column: its own, or `spare` filled with it. */
const columnOf = ({ columns, rows }: Block, operand: Operand, spare: Float64Array): Float64Array =>
  (isVaried(operand) ? (columns[operand.column] as Float64Array) : spare.fill(operand.value, 0, rows));

const exact = (node: Node, figures: ReadonlyMap<string, Decimal>): Decimal =>
  readNode(node, decimalReading, new Map(), (leaf) => (leaf.kind === 'given' && leaf.path !== undefined ? figures.get(leaf.path) : undefined));

/** Rows with an input outside what it may be, or without that input at all. */
function markInputs({ variant, columns, rows, verdicts }: Block): void {
  variant.leaves.forEach((leaf, input) => {
    const values = columns[input] as Float64Array;
    const [low, high] = leaf === undefined ? [1, 0] : leaf.between === undefined ? [-Infinity, Infinity] : [leaf.between[0].toNumber(), leaf.between[1].toNumber()];
    for (let i = 0; i < rows; i += 1) if (!((values[i] as number) >= low && (values[i] as number) <= high)) setMark(verdicts, i, mark.elsewhere);
  });
}

/** Rows for which a decision falls out another way, or is too near to tell. */
function markDecisions(block: Block): void {
  const { variant, rows, verdicts } = block;
  for (const { decision, left, right } of variant.decisions) {
    const below = holdsFor(-1, decision.comparison) === decision.holds;
    const above = holdsFor(1, decision.comparison) === decision.holds;
    const a = columnOf(block, left, verdicts.same[0]);
    if (!isVaried(right)) {
      // Between these two a figure is too near the fixed one; 3 where the band has 2 makes room for the figure's own share.
      const low = below ? right.value - 3 * guardShare * Math.abs(right.value) : Number.NEGATIVE_INFINITY;
      const high = above ? right.value + 3 * guardShare * Math.abs(right.value) : Number.POSITIVE_INFINITY;
      for (let i = 0; i < rows; i += 1) if (!((a[i] as number) > high || (a[i] as number) < low)) setMark(verdicts, i, mark.otherWay);
      continue;
    }
    const b = columnOf(block, right, verdicts.same[1]);
    for (let i = 0; i < rows; i += 1) {
      const edge = guardShare * (Math.abs(a[i] as number) + Math.abs(b[i] as number));
      const gap = (b[i] as number) - (a[i] as number);
      if (!((gap > edge && below) || (gap < -edge && above))) setMark(verdicts, i, mark.otherWay);
    }
  }
}

function decideReserve({ node }: Guarded, row: number, { verdicts, exactRow }: Block): void {
  setMark(verdicts, row, mark.exact);
  const sides = node.kind === 'computed' && node.operation === 'difference' ? node.of : undefined;
  const figures = exactRow(row);
  const side = sides === undefined ? exact(node, figures).comparedTo(0) : compareDecimals(exact(sides[0] as Node, figures), exact(sides[1] as Node, figures));
  if (side < 0) verdicts.holds[row] = 0;
}

function markHolds(block: Block): void {
  const { variant, columns, rows, verdicts: { holds, same } } = block;
  holds.fill(variant.overAnyway ? 0 : 1, 0, rows);
  for (const reserve of variant.reserves) {
    const values = columnOf(block, reserve.at, same[0]);
    if (isVaried(reserve.band)) {
      const limits = columns[reserve.band.column] as Float64Array;
      for (let i = 0; i < rows; i += 1) {
        const edge = 2 * guardShare * Math.abs(limits[i] as number);
        if ((values[i] as number) > edge) continue;
        if ((values[i] as number) < -edge) holds[i] = 0; else decideReserve(reserve, i, block);
      }
      continue;
    }
    const edge = 2 * guardShare * Math.abs(reserve.band.value);
    for (let i = 0; i < rows; i += 1) {
      if ((values[i] as number) > edge) continue;
      if ((values[i] as number) < -edge) holds[i] = 0; else decideReserve(reserve, i, block);
    }
  }
}

function markGoverning(block: Block): void {
  const { variant: { shares }, rows, verdicts: { governs, most, second, same } } = block;
  governs.fill(0, 0, rows);
  const [first] = shares;
  if (first === undefined) return;
  most.set(columnOf(block, first.at, same[0]));
  second.fill(Number.NEGATIVE_INFINITY, 0, rows);
  for (let k = 1; k < shares.length; k += 1) {
    const used = columnOf(block, (shares[k] as (typeof shares)[number]).at, same[0]);
    for (let i = 0; i < rows; i += 1) {
      const share = used[i] as number;
      const best = most[i] as number;
      if (share > best) {
        second[i] = best;
        most[i] = share;
        governs[i] = k;
      } else if (share > (second[i] as number)) second[i] = share;
    }
  }
  for (let i = 0; i < rows; i += 1) {
    const best = most[i] as number;
    if (best - (second[i] as number) <= guardShare * Math.abs(best)) breakTie(block, i, best);
  }
}

function breakTie({ variant: { shares }, columns, verdicts, exactRow }: Block, row: number, most: number): void {
  setMark(verdicts, row, mark.exact);
  const figures = exactRow(row);
  const valueOf = (at: Operand): number => (isVaried(at) ? ((columns[at.column] as Float64Array)[row] as number) : at.value);
  const close = shares.flatMap(({ at, check: { load, limit } }, k) =>
    (most - valueOf(at) <= 2 * guardShare * Math.abs(most) ? [{ k, load: exact(load.why, figures), limit: exact(limit.why, figures) }] : []));
  const order = (a: (typeof close)[number], b: (typeof close)[number]): number => compareDecimals(a.load.times(b.limit), b.load.times(a.limit));
  const worst = close.reduce((best, next) => (order(next, best) > 0 ? next : best));
  const tied = close.filter((candidate) => order(candidate, worst) === 0).map(({ k }) => k);
  verdicts.governs[row] = tied[0] ?? worst.k;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}

/** Runs the tape over rows whose input columns are filled, and judges every row. */
export function evaluateBlock(variant: Variant, columns: readonly Float64Array[], rows: number, verdicts: BlockVerdicts, exactRow: ExactRow): void {
  const block: Block = { variant, columns, rows, verdicts, exactRow };
  runBlock(variant.tape, columns, rows);
  verdicts.marks.fill(0, 0, rows);
  verdicts.marked = false;
  verdicts.ties.clear();
  markInputs(block);
  markDecisions(block);
  markHolds(block);
  markGoverning(block);
}
