/** Loops that find the greatest and the second greatest share used of each row. */
import type { Column } from './columns.js';

/** A share used as the loops take it: `times x column + plus`. */
export interface Ranked {
  readonly column: Column;
  readonly times: number;
  readonly plus: number;
}

function rankFour(
  a: Column,
  at: number,
  ap: number,
  b: Column,
  bt: number,
  bp: number,
  c: Column,
  ct: number,
  cp: number,
  d: Column,
  dt: number,
  dp: number,
  k: number,
  most: Column,
  second: Column,
  whose: Uint16Array,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    let first = most[i] as number;
    let next = second[i] as number;
    let who = whose[i] as number;
    const p = at * (a[i] as number) + ap;
    if (p > first) {
      next = first;
      first = p;
      who = k;
    } else if (p > next) next = p;
    const q = bt * (b[i] as number) + bp;
    if (q > first) {
      next = first;
      first = q;
      who = k + 1;
    } else if (q > next) next = q;
    const r = ct * (c[i] as number) + cp;
    if (r > first) {
      next = first;
      first = r;
      who = k + 2;
    } else if (r > next) next = r;
    const s = dt * (d[i] as number) + dp;
    if (s > first) {
      next = first;
      first = s;
      who = k + 3;
    } else if (s > next) next = s;
    most[i] = first;
    second[i] = next;
    whose[i] = who;
  }
}

function rankOne(
  a: Column,
  at: number,
  ap: number,
  k: number,
  most: Column,
  second: Column,
  whose: Uint16Array,
  rows: number,
): void {
  for (let i = 0; i < rows; i += 1) {
    const p = at * (a[i] as number) + ap;
    const first = most[i] as number;
    if (p > first) {
      second[i] = first;
      most[i] = p;
      whose[i] = k;
    } else if (p > (second[i] as number)) second[i] = p;
  }
}

/** The greatest share of each row, the second greatest, and whose the greatest is: four at a time, the rest one by one. */
export function rank(shares: readonly Ranked[], most: Column, second: Column, whose: Uint16Array, rows: number): void {
  most.fill(Number.NEGATIVE_INFINITY, 0, rows);
  second.fill(Number.NEGATIVE_INFINITY, 0, rows);
  whose.fill(0, 0, rows);
  let k = 0;
  for (; k + 4 <= shares.length; k += 4) {
    const [a, b, c, d] = shares.slice(k, k + 4) as [Ranked, Ranked, Ranked, Ranked];
    rankFour(
      a.column,
      a.times,
      a.plus,
      b.column,
      b.times,
      b.plus,
      c.column,
      c.times,
      c.plus,
      d.column,
      d.times,
      d.plus,
      k,
      most,
      second,
      whose,
      rows,
    );
  }
  for (; k < shares.length; k += 1) {
    const { column, times, plus } = shares[k] as Ranked;
    rankOne(column, times, plus, k, most, second, whose, rows);
  }
}
