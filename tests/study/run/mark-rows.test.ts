/** Rows that leave their tape: by an input out of range, or at the first decision that falls out otherwise. */
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/study/run/block.js';
import { markOutsiders } from '../../../src/study/run/mark-rows.js';
import { mark, verdictsFor } from '../../../src/study/run/row-marks.js';
import {
  byColumn,
  type ColumnBound,
  type DecisionBound,
  interiorOf,
  onColumn,
  tightened,
} from '../../../src/study/tape/bounds.js';
import { type Comparison, constant, type Decision, decide, given } from '../../../src/trace/index.js';
import { ratio } from '../../../src/units/index.js';

/** A recorded decision of a column against a number, and its bound; the band is a tenth. */
function decided(column: number, recorded: number, how: Comparison, limit: number, turn: number): DecisionBound {
  const decision = decide(given('x', ratio(recorded), 'stated', 'x'), how, constant(ratio(limit)));
  const line = { column, times: 1, plus: -limit };
  return { ...onColumn(interiorOf(decision, 0.1), line), ...line, decision, turn, band: 0.1 };
}

/** Marks and turns of rows given column by column; `otherwise` are the decisions that decimals find to fall out otherwise. */
function marked(
  columns: readonly (readonly number[])[],
  inputBounds: readonly ColumnBound[],
  decisions: readonly DecisionBound[] = [],
  otherwise: readonly number[] = [],
) {
  const rows = columns[0]?.length ?? 0;
  const verdicts = verdictsFor(rows);
  const asked: number[] = [];
  const turnOf = (decision: Decision): number =>
    (decisions.find((each) => each.decision === decision) as DecisionBound).turn;
  const asRecorded = (_row: number, decision: Decision): boolean => {
    asked.push(turnOf(decision));
    return !otherwise.includes(turnOf(decision));
  };
  const bounds = byColumn(decisions);
  markOutsiders({
    branch: { allBounds: tightened([...inputBounds, ...bounds]), inputBounds, tape: { bounds } },
    columns: columns.map((column) => Float64Array.from(column)),
    rows,
    verdicts,
    exact: { asRecorded },
  } as unknown as Block);
  const { marks, turns, marked: any } = verdicts;
  return { marks: [...marks], turns: [...turns], any, asked };
}

describe('an input out of range', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8, 9])('is seen in each of %i columns, on either side', (count) => {
    const rows = 2 * count + 1;
    // Row 2 k is above the range of column k, the row behind it below; the last one is within all.
    const columns = Array.from({ length: count }, (_, k) =>
      Array.from({ length: rows }, (_each, row) => [k + 2, k - 1][row - 2 * k] ?? k + (row % 2)),
    );
    const bounds = columns.map((_, column) => ({ column, low: column, high: column + 1 }));
    const { marks, any } = marked(columns, bounds);
    expect(marks).toEqual([...Array.from({ length: rows - 1 }, () => mark.elsewhere), 0]);
    expect(any).toBe(true);
    const inside = columns.map((column) => column.slice(-1));
    expect(marked(inside, bounds)).toMatchObject({ marks: [0], any: false });
  });
  it('has no column at all where nothing varies', () => expect(marked([[1, 2]], []).marks).toEqual([0, 0]));
  it('counts before every decision, and a figure that is none is out of range', () => {
    const { marks } = marked([[3, Number.NaN, 0]], [{ column: 0, low: 0, high: 2 }], [decided(0, 1, '<', 2, 0)]);
    expect(marks).toEqual([mark.elsewhere, mark.elsewhere, 0]);
  });
});

describe('a decision that falls out otherwise', () => {
  const all = [decided(0, 1, '<', 5, 2), decided(0, 1, '<', 3, 7), decided(1, 1, '<', 5, 4), decided(1, 1, '>', 0, 9)];
  const ask = (x: number, y: number, otherwise: readonly number[] = []) => {
    const { marks, turns, asked } = marked([[x], [y]], [], all, otherwise);
    return { mark: marks[0], turn: turns[0], asked };
  };
  const other = { mark: mark.otherWay, asked: [] };
  it('is the first of those of the row, in the order of the program', () => {
    expect(ask(1, 1)).toEqual({ mark: 0, turn: 0, asked: [] });
    expect(ask(4, 1)).toEqual({ ...other, turn: 7 });
    expect(ask(6, 1)).toEqual({ ...other, turn: 2 });
    expect(ask(4, 6)).toEqual({ ...other, turn: 4 });
    expect(ask(6, 6)).toEqual({ ...other, turn: 2 });
    expect(ask(1, -1)).toEqual({ ...other, turn: 9 });
    expect(ask(4, -1)).toEqual({ ...other, turn: 7 });
  });
  it('is asked in decimals where doubles do not tell: those before the first that is sure, in their order', () => {
    expect(ask(5, 1)).toEqual({ mark: mark.otherWay, turn: 7, asked: [2] });
    expect(ask(5, 1, [2])).toEqual({ mark: mark.otherWay, turn: 2, asked: [2] });
    expect(ask(3, 1)).toEqual({ mark: mark.exact, turn: 0, asked: [7] });
    expect(ask(3, 5)).toEqual({ mark: mark.exact, turn: 0, asked: [4, 7] });
    expect(ask(3, 5, [4])).toEqual({ mark: mark.otherWay, turn: 4, asked: [4] });
    expect(ask(3, 5, [7])).toEqual({ mark: mark.otherWay, turn: 7, asked: [4, 7] });
    // The one at turn 9 is not reached: the program leaves at turn 7.
    expect(ask(4, 0)).toEqual({ mark: mark.otherWay, turn: 7, asked: [] });
    expect(ask(1, 0)).toEqual({ mark: mark.exact, turn: 0, asked: [9] });
  });
});
