/**
 * What the loops of a tape read and write. The numbers are arguments of the loops: a loop that reads them from its
 * surroundings takes almost twice as long.
 */

export type Column = Float64Array;
export type Columns = readonly Float64Array[];
export type Run = (columns: Columns, rows: number) => void;

/** The column of a number. */
export const at = (columns: Columns, column: number): Column => columns[column] as Column;
