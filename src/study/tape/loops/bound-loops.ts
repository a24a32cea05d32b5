/** Loops that find rows outside the ends of a column. */
import type { Column } from './columns.js';

/** Calls back for each row outside the ends of one column; both ends are inside. */
export function outside(x: Column, low: number, high: number, rows: number, found: (row: number) => void): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    if (!(v >= low && v <= high)) found(i);
  }
}

/** The same for two columns in one loop. */
export function outsideTwo(
  x: Column,
  low: number,
  high: number,
  y: Column,
  floor: number,
  top: number,
  rows: number,
  found: (row: number) => void,
): void {
  for (let i = 0; i < rows; i += 1) {
    const v = x[i] as number;
    const w = y[i] as number;
    if (!(v >= low && v <= high && w >= floor && w <= top)) found(i);
  }
}
