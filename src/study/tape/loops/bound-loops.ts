/** The loops that find rows outside the ends of columns. */
import type { Column } from './columns.js';

/** Calls back for each row outside the ends of one of four columns; both ends are inside. */
export function outsideFour(
  x: Column,
  y: Column,
  z: Column,
  u: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  e: number,
  f: number,
  g: number,
  h: number,
  rows: number,
  found: (row: number) => void,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = x[i] as number;
    const q = y[i] as number;
    const r = z[i] as number;
    const s = u[i] as number;
    if (!(p >= a && p <= b && q >= c && q <= d && r >= e && r <= f && s >= g && s <= h)) found(i);
  }
}

/** The same for two columns. */
export function outsideTwo(
  x: Column,
  y: Column,
  a: number,
  b: number,
  c: number,
  d: number,
  rows: number,
  found: (row: number) => void,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = x[i] as number;
    const q = y[i] as number;
    if (!(p >= a && p <= b && q >= c && q <= d)) found(i);
  }
}
