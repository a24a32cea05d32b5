/** Rows that the tape of a block cannot answer: an input out of range, or another branch of the program. */
import { type ColumnBound, type DecidedBound, type DecisionBound, outcomeFor } from '../tape/bounds.js';
import { outsideFour, outsideTwo } from '../tape/loops/bound-loops.js';
import type { Block } from './block.js';
import { mark, setMark } from './row-marks.js';

const valueAt = ({ columns }: Block, column: number, row: number): number =>
  (columns[column] as Float64Array)[row] as number;

const isInside = (block: Block, { column, low, high }: ColumnBound, row: number): boolean => {
  const x = valueAt(block, column, row);
  return x >= low && x <= high;
};

const inOrder = (a: DecisionBound, b: DecisionBound): number => a.turn - b.turn;

/** The first decision on a column that falls out otherwise for a figure, if one does before `turn`; what doubles cannot tell goes to `near`. */
function firstOther({ decisions }: DecidedBound, x: number, turn: number, near: DecisionBound[]): number {
  for (const decision of decisions) {
    if (decision.turn >= turn) return turn;
    if (x >= decision.low && x <= decision.high) continue;
    const outcome = outcomeFor(decision, x);
    if (outcome === 'another branch') return decision.turn;
    if (outcome === 'too near to tell') near.push(decision);
  }
  return turn;
}

/**
 * The mark of a row outside some bound. Of the decisions that fall out otherwise the first one counts: the recorded program goes
 * another way there. Comparisons that doubles cannot decide are asked in decimals, those before it only.
 */
function markOf(block: Block, row: number): number {
  const { inputBounds, tape } = block.branch;
  for (const bound of inputBounds) if (!isInside(block, bound, row)) return mark.elsewhere;
  let turn = Number.POSITIVE_INFINITY;
  const near: DecisionBound[] = [];
  for (const bound of tape.bounds) {
    const x = valueAt(block, bound.column, row);
    if (!(x >= bound.low && x <= bound.high)) turn = firstOther(bound, x, turn, near);
  }
  const other = near.sort(inOrder).find((each) => each.turn < turn && !block.exact.asRecorded(row, each.decision));
  turn = other?.turn ?? turn;
  if (turn === Number.POSITIVE_INFINITY) return near.length === 0 ? 0 : mark.exact;
  block.verdicts.turns[row] = turn;
  return mark.otherWay;
}

/** Marks every row outside a bound. */
export function markOutsiders(block: Block): void {
  const {
    branch: { allBounds },
    rows,
    verdicts,
  } = block;
  const found = (row: number): void => {
    const as = verdicts.marks[row] === 0 ? markOf(block, row) : 0;
    if (as !== 0) setMark(verdicts, row, as);
  };
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
