/**
 * A block of rows on one tape, with a guard at every comparison: a row that stands within the band of a limit is decided again
 * with exact decimals, and a row for which the program would have gone another way is assessed from its spec.
 */
import { compareDecimals } from '../units/internal.js';
import { decimalReading, holdsFor, type Node, readNode } from '../trace/index.js';
import type { Decimal } from '../units/index.js';
import type { Operand } from './steps.js';
import { isVaried, runBlock } from './tape.js';
import type { Variant } from './variant.js';

/** The share of a limit within which a double is not trusted to know its side. */
export const guardShare = 1e-9;

/** What became of the rows of a block. `elsewhere` rows must be assessed from their spec. */
export interface BlockVerdicts {
  readonly holds: Uint8Array;
  /** Index into the variant's `shares`; ties are broken exactly and listed in `ties`. */
  readonly governs: Uint16Array;
  readonly elsewhere: Uint8Array;
  readonly ties: Map<number, readonly number[]>;
  /** Rows decided again with exact decimals. */
  decidedExactly: number;
}

type Columns = readonly Float64Array[];
const column = (columns: Columns, operand: Operand): Float64Array | undefined => (isVaried(operand) ? columns[operand.column] : undefined);
const valueAt = (columns: Columns, operand: Operand, row: number): number => (isVaried(operand) ? ((columns[operand.column] as Float64Array)[row] as number) : operand.value);

/** Exact reading of one figure on one row: the leaves that vary take the row's exact figures. */
export type ExactRow = (row: number) => ReadonlyMap<string, Decimal>;

function exact(node: Node, figures: ReadonlyMap<string, Decimal>): Decimal {
  return readNode(node, decimalReading, new Map(), (leaf) => (leaf.kind === 'given' && leaf.path !== undefined ? figures.get(leaf.path) : undefined));
}

function markElsewhere({ decisions, leaves, columns }: Variant, rows: number, elsewhere: Uint8Array): void {
  leaves.forEach((leaf, input) => {
    const values = columns[input] as Float64Array;
    if (leaf === undefined) { elsewhere.fill(1, 0, rows); return; }
    if (leaf.between === undefined) return;
    const [low, high] = leaf.between.map((end) => end.toNumber()) as [number, number];
    for (let i = 0; i < rows; i += 1) if (!((values[i] as number) >= low && (values[i] as number) <= high)) elsewhere[i] = 1;
  });
  for (const { decision, left, right } of decisions) {
    for (let i = 0; i < rows; i += 1) {
      const a = valueAt(columns, left, i);
      const b = valueAt(columns, right, i);
      const near = Math.abs(a - b) <= guardShare * (Math.abs(a) + Math.abs(b));
      const order = a < b ? -1 : 1;
      if (near || holdsFor(order, decision.comparison) !== decision.holds) elsewhere[i] = 1;
    }
  }
}

function markHolds(variant: Variant, rows: number, verdicts: BlockVerdicts, exactRow: ExactRow): void {
  const { holds } = verdicts;
  holds.fill(variant.overAnyway ? 0 : 1, 0, rows);
  for (const { node, at, band } of variant.reserves) {
    const values = column(variant.columns, at) as Float64Array;
    for (let i = 0; i < rows; i += 1) {
      const reserve = values[i] as number;
      const edge = 2 * guardShare * Math.abs(valueAt(variant.columns, band, i));
      if (reserve > edge) continue;
      if (reserve < -edge) { holds[i] = 0; continue; }
      verdicts.decidedExactly += 1;
      const sides = node.kind === 'computed' && node.operation === 'difference' ? node.of : undefined;
      const figures = exactRow(i);
      const side = sides === undefined ? exact(node, figures).comparedTo(0) : compareDecimals(exact(sides[0] as Node, figures), exact(sides[1] as Node, figures));
      if (side < 0) holds[i] = 0;
    }
  }
}

function markGoverning({ shares, columns }: Variant, rows: number, verdicts: BlockVerdicts, exactRow: ExactRow): void {
  const { governs } = verdicts;
  governs.fill(0, 0, rows);
  const [first, ...others] = shares;
  if (first === undefined) return;
  const most = new Float64Array(rows);
  const second = new Float64Array(rows).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < rows; i += 1) most[i] = valueAt(columns, first.at, i);
  others.forEach(({ at }, k) => {
    for (let i = 0; i < rows; i += 1) {
      const used = valueAt(columns, at, i);
      const best = most[i] as number;
      if (used > best) {
        second[i] = best;
        most[i] = used;
        governs[i] = k + 1;
      } else if (used > (second[i] as number)) second[i] = used;
    }
  });
  for (let i = 0; i < rows; i += 1) {
    const best = most[i] as number;
    if (best - (second[i] as number) <= guardShare * Math.abs(best)) tie(shares, columns, i, best, verdicts, exactRow);
  }
}

function tie(shares: Variant['shares'], columns: Columns, row: number, most: number, verdicts: BlockVerdicts, exactRow: ExactRow): void {
  verdicts.decidedExactly += 1;
  const figures = exactRow(row);
  const close = shares.flatMap((share, k) => (most - valueAt(columns, share.at, row) <= 2 * guardShare * Math.abs(most) ? [{ k, share }] : []));
  const read = close.map(({ k, share: { check } }) => ({ k, load: exact(check.load.why, figures), limit: exact(check.limit.why, figures) }));
  const order = (a: (typeof read)[number], b: (typeof read)[number]): number => compareDecimals(a.load.times(b.limit), b.load.times(a.limit));
  const worst = read.reduce((best, next) => (order(next, best) > 0 ? next : best));
  const tied = read.filter((candidate) => order(candidate, worst) === 0).map(({ k }) => k);
  verdicts.governs[row] = tied[0] ?? worst.k;
  if (tied.length > 1) verdicts.ties.set(row, tied);
}

/** Runs the tape over rows whose input columns are filled, and judges every row. */
export function evaluateBlock(variant: Variant, rows: number, verdicts: BlockVerdicts, exactRow: ExactRow): void {
  runBlock(variant.tape, variant.columns, rows);
  verdicts.elsewhere.fill(0, 0, rows);
  verdicts.ties.clear();
  markElsewhere(variant, rows, verdicts.elsewhere);
  markHolds(variant, rows, verdicts, exactRow);
  markGoverning(variant, rows, verdicts, exactRow);
}
