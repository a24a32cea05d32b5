/**
 * What the loops of a tape read and write. The numbers are arguments of the loops, or are taken out of a record before the first
 * row, which is as fast: a loop that reads them from its surroundings takes almost twice as long.
 */

export type Column = Float64Array;
export type Columns = readonly Float64Array[];
/** A share used as the loops take it: `times x column + plus`. A loop takes its numbers out before its first row. */
export interface Share {
  readonly column: Column;
  readonly times: number;
  readonly plus: number;
}
export type FourShares = readonly [Share, Share, Share, Share];

export type Run = (columns: Columns, rows: number) => void;

/** The column of a number. */
export const at = (columns: Columns, column: number): Column => columns[column] as Column;
