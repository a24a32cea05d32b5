/** Rows by their alternative, figures to their places, and marked rows by what is to be done with them. */
import { describe, expect, it } from 'vitest';
import type { Alternative } from '../../../src/study/run/alternative.js';
import {
  allPlaces,
  figureColumns,
  gather,
  groupsOf,
  leavingRows,
  sortMarked,
} from '../../../src/study/run/row-groups.js';
import { mark, verdictsFor } from '../../../src/study/run/row-marks.js';

const columns = (...lists: readonly (readonly number[])[]) => lists.map((list) => Int16Array.from(list));

describe('the rows of a chunk', () => {
  it('are one group without places where all take the same alternatives', () => {
    expect(groupsOf([], 5)).toEqual([{ indexes: [] }]);
    expect(groupsOf(columns([2, 2, 2, 7], [-1, -1, -1, 7]), 3)).toEqual([{ indexes: [2, -1] }]);
  });
  it('are groups in the order of their first rows otherwise', () => {
    expect(groupsOf(columns([1, 1, 0, 1, 7], [0, 1, 0, 0, 7]), 4)).toEqual([
      { indexes: [1, 0], places: [0, 3] },
      { indexes: [1, 1], places: [1] },
      { indexes: [0, 0], places: [2] },
    ]);
    expect(groupsOf(columns([0, 0, 1]), 3).length).toBe(2);
  });
  it('are all of them, or gathered side by side', () => {
    expect(allPlaces(3)).toEqual([0, 1, 2]);
    const to = new Float64Array(3);
    gather(Float64Array.of(5, 6, 7), to, [2, 0]);
    expect([...to]).toEqual([7, 5, 0]);
    gather(Float64Array.of(5, 6, 7), to, undefined);
    expect([...to]).toEqual([5, 6, 7]);
  });
});

describe('the figures of a tape', () => {
  const tape = {
    figures: [
      { name: 'gross', at: { column: 1 } },
      { name: 'empty', at: { value: 4 } },
    ],
  } as unknown as Alternative;
  const own = [Float64Array.of(9, 9, 9), Float64Array.of(1, 2, 3)];
  const out = () => [Float64Array.of(0, 0, 0), Float64Array.of(0, 0, 0), Float64Array.of(0, 0, 0)];
  const names = ['empty', 'gross', 'unknown'];
  const found = (count: number, handOut: boolean, places?: readonly number[]) =>
    figureColumns(tape, own, out(), names, count, handOut, places);
  it('are put in the places of their rows; one that is not measured is left', () => {
    expect(found(2, false, [2, 0]).map((column) => [...column])).toEqual([
      [4, 0, 4],
      [2, 0, 1],
      [0, 0, 0],
    ]);
    expect(found(2, false).map((column) => [...column])).toEqual([
      [4, 4, 0],
      [1, 2, 3],
      [0, 0, 0],
    ]);
  });
  it('are handed out as they are where nothing else needs their columns', () => {
    expect(found(3, true)[1]).toBe(own[1]);
    expect(found(3, false)[1]).not.toBe(own[1]);
  });
});

describe('marked rows', () => {
  const verdicts = verdictsFor(7);
  verdicts.marks.set([
    0,
    mark.exact,
    mark.otherWay,
    mark.elsewhere,
    mark.otherWay,
    mark.otherWay + mark.exact,
    mark.exact,
  ]);
  verdicts.turns.set([0, 8, 3, 8, 5, 3, 8]);
  it('are sent on, assessed whole, or counted as done', () => {
    const { whole, otherWay, exactRows } = sortMarked(verdicts, 6, (j) => 10 * j);
    expect(whole).toEqual([30]);
    expect([...otherWay]).toEqual([
      [3, [20, 50]],
      [5, [40]],
    ]);
    // Row 1 was decided in decimals, row 3 will be assessed; row 6 was not asked.
    expect(exactRows).toBe(2);
    expect(leavingRows(otherWay)).toBe(3);
  });
});
