/** Rows that the tape of a block cannot answer: an input out of range, or another branch of the program. */
import { type ColumnBound, type DecidedBound, type DecisionBound, outcomeFor } from '../tape/bounds.js';
import { outsideFour, outsideTwo } from '../tape/loops/bound-loops.js';
import type { Block } from './block.js';
import { mark, setMark } from './row-marks.js';

const never = Number.POSITIVE_INFINITY;
const none: readonly DecisionBound[] = [];

/** Comparisons that doubles cannot decide, in their order. */
const inOrder = (near: DecisionBound[]): DecisionBound[] => near.sort((a, b) => a.turn - b.turn);

/** The marks of the rows of a block, one by one. */
class Marking {
  private readonly columns: readonly Float64Array[];
  /** The comparisons of a row that doubles cannot decide; a list is made for the rows that have some. */
  private near: readonly DecisionBound[] = none;

  constructor(
    private readonly block: Block,
    private readonly inputBounds: readonly ColumnBound[],
    private readonly bounds: readonly DecidedBound[],
  ) {
    this.columns = bounds.map(({ column }) => block.columns[column] as Float64Array);
  }

  /** Marks a row outside some bound, if it has no mark. */
  readonly found = (row: number): void => {
    if (this.block.verdicts.marks[row] !== 0) return;
    const as = this.markOf(row);
    if (as !== 0) setMark(this.block.verdicts, row, as);
  };

  /**
   * Of the decisions that fall out otherwise the first one counts: the recorded program goes another way there. Comparisons that
   * doubles cannot decide are asked in decimals, those before it only.
   */
  private markOf(row: number): number {
    const { inputBounds, bounds, columns, block } = this;
    for (let k = 0; k < inputBounds.length; k += 1) {
      const { column, low, high } = inputBounds[k] as ColumnBound;
      const x = (block.columns[column] as Float64Array)[row] as number;
      if (!(x >= low && x <= high)) return mark.elsewhere;
    }
    let turn = never;
    this.near = none;
    for (let k = 0; k < bounds.length; k += 1) {
      const bound = bounds[k] as DecidedBound;
      const x = (columns[k] as Float64Array)[row] as number;
      if (!(x >= bound.low && x <= bound.high)) turn = this.firstOther(bound.decisions, x, turn);
    }
    const asked = this.near.length > 0;
    if (asked) turn = this.firstAsked(row, turn);
    if (turn === never) return asked ? mark.exact : 0;
    block.verdicts.turns[row] = turn;
    return mark.otherWay;
  }

  /** The first decision on a column that falls out otherwise for a figure, if one does before `turn`. */
  private firstOther(decisions: readonly DecisionBound[], x: number, turn: number): number {
    for (let k = 0; k < decisions.length; k += 1) {
      const decision = decisions[k] as DecisionBound;
      if (decision.turn >= turn) return turn;
      if (x >= decision.low && x <= decision.high) continue;
      const outcome = outcomeFor(decision, x);
      if (outcome === 'another branch') return decision.turn;
      if (outcome === 'too near to tell') this.near = [...this.near, decision];
    }
    return turn;
  }

  private firstAsked(row: number, turn: number): number {
    for (const each of inOrder([...this.near])) {
      if (each.turn >= turn) return turn;
      if (!this.block.exact.asRecorded(row, each.decision)) return each.turn;
    }
    return turn;
  }
}

/** Marks every row outside a bound. */
export function markOutsiders(block: Block): void {
  const {
    branch: { allBounds, inputBounds, tape },
    rows,
  } = block;
  const { found } = new Marking(block, inputBounds, tape.bounds);
  const values = ({ column }: ColumnBound): Float64Array => block.columns[column] as Float64Array;
  let k = 0;
  for (; k + 2 < allBounds.length; k += 4) {
    const [a, b, c] = allBounds.slice(k, k + 3) as [ColumnBound, ColumnBound, ColumnBound];
    const d = allBounds[k + 3] ?? c;
    outsideFour(
      values(a),
      values(b),
      values(c),
      values(d),
      a.low,
      a.high,
      b.low,
      b.high,
      c.low,
      c.high,
      d.low,
      d.high,
      rows,
      found,
    );
  }
  const [a, b = a] = allBounds.slice(k);
  if (a !== undefined && b !== undefined) outsideTwo(values(a), values(b), a.low, a.high, b.low, b.high, rows, found);
}
