/** Loops that find the greatest and the second greatest share used of each row. */
import type { Column, FourShares, Share } from './columns.js';

function rankFour(shares: FourShares, k: number, most: Column, second: Column, whose: Uint16Array, rows: number): void {
  const { column: a, times: at, plus: ap } = shares[0];
  const { column: b, times: bt, plus: bp } = shares[1];
  const { column: c, times: ct, plus: cp } = shares[2];
  const { column: d, times: dt, plus: dp } = shares[3];
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
  { column: a, times: at, plus: ap }: Share,
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
export function rank(shares: readonly Share[], most: Column, second: Column, whose: Uint16Array, rows: number): void {
  most.fill(Number.NEGATIVE_INFINITY, 0, rows);
  second.fill(Number.NEGATIVE_INFINITY, 0, rows);
  whose.fill(0, 0, rows);
  let k = 0;
  for (; k + 4 <= shares.length; k += 4)
    rankFour(shares.slice(k, k + 4) as [...FourShares], k, most, second, whose, rows);
  for (; k < shares.length; k += 1) rankOne(shares[k] as Share, k, most, second, whose, rows);
}
