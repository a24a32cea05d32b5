/** Exact figures of single rows, for comparisons that doubles cannot decide. */
import type { Check } from '../../ratings/index.js';
import { type Decision, decimalReading, holdsFor, type Node, readOperation } from '../../trace/index.js';
import type { Decimal } from '../../units/index.js';
import { compareDecimals, zero } from '../../units/internal.js';
import type { DecisionMemo } from './decision-memo.js';

/** The exact figures of a row, by path: the leaves that vary take them. */
export type FiguresOf = (row: number) => ReadonlyMap<string, Decimal>;

interface ExactRow {
  readonly leaves: ReadonlyMap<string, Decimal>;
  readonly figures: Map<Node, Decimal>;
}

/** Reads what varies again in decimals, each node once a row; what does not vary is taken as recorded. */
export class ExactRows {
  private readonly rows = new Map<number, ExactRow>();

  constructor(
    private readonly varies: (node: Node) => boolean,
    private readonly figuresOf: FiguresOf,
    private readonly memo: DecisionMemo,
  ) {}

  /** The figure of a node on a row. Throws a `RangeError` where a divisor is zero. */
  figure(row: number, node: Node): Decimal {
    return this.varies(node) ? this.read(this.rowOf(row), node) : node.value.value;
  }

  /** -1, 0 or 1: how the figures of two nodes compare on a row. */
  order(row: number, left: Node, right: Node): -1 | 0 | 1 {
    return compareDecimals(this.figure(row, left), this.figure(row, right));
  }

  /** -1, 0 or 1: how two shares used compare on a row, as loads times limits. Of one load that presses the limits alone tell. */
  orderOfShares(row: number, a: Check, b: Check): -1 | 0 | 1 {
    const load = this.figure(row, a.load.why);
    if (a.load.why === b.load.why && load.gt(zero)) return this.order(row, b.limit.why, a.limit.why);
    return compareDecimals(
      load.times(this.figure(row, b.limit.why)),
      this.figure(row, b.load.why).times(this.figure(row, a.limit.why)),
    );
  }

  /** Whether a recorded decision has the same outcome on a row; it has not where a side has no figure. */
  asRecorded(row: number, decision: Decision): boolean {
    const [path, ...others] = this.memo.inputsOf(decision);
    const figure = path === undefined || others.length > 0 ? undefined : this.rowOf(row).leaves.get(path);
    if (figure === undefined) return this.asks(row, decision);
    const known = this.memo.outcome(decision, figure);
    if (known !== undefined) return known;
    return this.memo.keep(decision, figure, this.asks(row, decision));
  }

  private asks(row: number, { left, right, comparison, holds }: Decision): boolean {
    try {
      return holdsFor(this.order(row, left, right), comparison) === holds;
    } catch (reason) {
      if (reason instanceof RangeError) return false;
      throw reason;
    }
  }

  private rowOf(row: number): ExactRow {
    const found = this.rows.get(row);
    if (found !== undefined) return found;
    const made = { leaves: this.figuresOf(row), figures: new Map<Node, Decimal>() };
    this.rows.set(row, made);
    return made;
  }

  private read(row: ExactRow, node: Node): Decimal {
    if (!this.varies(node)) return node.value.value;
    if (node.kind !== 'computed') return (node.kind === 'given' && row.leaves.get(node.path ?? '')) || node.value.value;
    const found = row.figures.get(node);
    if (found !== undefined) return found;
    const figure = readOperation(
      node,
      node.of.map((part) => this.read(row, part)),
      decimalReading,
    );
    row.figures.set(node, figure);
    return figure;
  }
}
