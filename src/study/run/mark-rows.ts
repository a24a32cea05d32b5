/** Rows that the tape of a block cannot answer: an input out of range, or another branch of the program. */
import { type ColumnBound, type DecisionBound, outcomeFor } from '../tape/bounds.js';
import { outside, outsideTwo } from '../tape/loops/bound-loops.js';
import type { Block } from './block.js';
import { mark, setMark } from './row-marks.js';

const valueAt = ({ columns }: Block, column: number, row: number): number =>
  (columns[column] as Float64Array)[row] as number;

const isInside = (block: Block, { column, low, high }: ColumnBound, row: number): boolean => {
  const x = valueAt(block, column, row);
  return x >= low && x <= high;
};

const inOrder = (a: DecisionBound, b: DecisionBound): number => a.turn - b.turn;

/**
 * The mark of a row outside some bound. Of the decisions that fall out otherwise the first one counts: the recorded program goes
 * another way there. Comparisons that doubles cannot decide are asked in decimals, those before it only.
 */
function markOf(block: Block, row: number): number {
  const { inputBounds, tape } = block.branch;
  if (!inputBounds.every((bound) => isInside(block, bound, row))) return mark.elsewhere;
  let turn = Number.POSITIVE_INFINITY;
  const near: DecisionBound[] = [];
  for (const bound of tape.bounds) {
    if (isInside(block, bound, row)) continue;
    for (const decision of tape.decisions.get(bound.column) ?? []) {
      if (decision.turn > turn) continue;
      const outcome = outcomeFor(decision, valueAt(block, bound.column, row));
      if (outcome === 'another branch') turn = decision.turn;
      if (outcome === 'too near to tell') near.push(decision);
    }
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
  for (let k = 0; k < allBounds.length; k += 2) {
    const [a, b] = [allBounds[k] as ColumnBound, allBounds[k + 1]];
    if (b === undefined) outside(values(a), a.low, a.high, rows, found);
    else outsideTwo(values(a), a.low, a.high, values(b), b.low, b.high, rows, found);
  }
}
