/** Groups rows by alternative and scatters their results back. */
import { isVaried } from '../tape/tape.js';
import type { Alternative } from './alternative.js';
import { type BlockVerdicts, mark } from './row-marks.js';

/** Rows of one alternative in a chunk; without places they are all of them. */
export interface Group {
  readonly indexes: readonly number[];
  readonly places?: number[];
}

/** The rows of each alternative, in the order of their first rows. */
export function groupsOf(choices: readonly Int16Array[], rows: number): readonly Group[] {
  const alike = choices.every((column) => {
    const first = column[0];
    for (let i = 1; i < rows; i += 1) if (column[i] !== first) return false;
    return true;
  });
  const indexesAt = (i: number): readonly number[] => choices.map((column) => column[i] as number);
  if (alike) return [{ indexes: indexesAt(0) }];
  const groups = new Map<string, { indexes: readonly number[]; places: number[] }>();
  for (let i = 0; i < rows; i += 1) {
    const key = indexesAt(i).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { indexes: indexesAt(i), places: [i] });
    else group.places.push(i);
  }
  return [...groups.values()];
}

/** The figures as columns: the tape's own columns when they may be returned, else copies. */
export function figureColumns(
  alternative: Alternative,
  columns: readonly Float64Array[],
  figures: readonly Float64Array[],
  names: readonly string[],
  count: number,
  handOut: boolean,
  places: readonly number[] | undefined,
): readonly Float64Array[] {
  return names.map((name, k) => {
    const out = figures[k] as Float64Array;
    const at = alternative.figures.find((figure) => figure.name === name)?.at;
    if (at === undefined) return out;
    if (!isVaried(at)) {
      if (places === undefined) out.fill(at.value, 0, count);
      else for (const i of places) out[i] = at.value;
      return out;
    }
    const column = columns[at.column] as Float64Array;
    if (handOut) return column;
    if (places === undefined) out.set(column);
    else
      places.forEach((i, j) => {
        out[i] = column[j] as number;
      });
    return out;
  });
}

export const allPlaces = (rows: number): readonly number[] => Array.from({ length: rows }, (_, i) => i);

/** The figures at some places, or all of them, side by side. */
export function gather(from: Float64Array, to: Float64Array, places: readonly number[] | undefined): void {
  if (places === undefined) to.set(from);
  else for (let j = 0; j < places.length; j += 1) to[j] = from[places[j] as number] as number;
}

/** Rows that take another branch, by the place of the decision at which they leave the recorded program. */
export type Leaving = ReadonlyMap<number, readonly number[]>;

/** How many rows leave. */
export function leavingRows(leaving: Leaving): number {
  let count = 0;
  for (const rows of leaving.values()) count += rows.length;
  return count;
}

/** Marked rows by what is to be done with them; exact ones are done already, and counted once with the whole ones. */
export function sortMarked(
  { marks, turns }: BlockVerdicts,
  count: number,
  placeOf: (j: number) => number,
): { whole: readonly number[]; otherWay: Leaving; exactRows: number } {
  const whole: number[] = [];
  const otherWay = new Map<number, number[]>();
  let exactRows = 0;
  for (let j = 0; j < count; j += 1) {
    const as = marks[j] as number;
    if (as === 0) continue;
    if ((as & mark.elsewhere) !== 0) whole.push(placeOf(j));
    else if ((as & mark.otherWay) !== 0) {
      const turn = turns[j] as number;
      const leaving = otherWay.get(turn);
      if (leaving === undefined) otherWay.set(turn, [placeOf(j)]);
      else leaving.push(placeOf(j));
    } else exactRows += 1;
  }
  return { whole, otherWay, exactRows: exactRows + whole.length };
}
