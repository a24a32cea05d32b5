/** The loops that give each row its verdict. */
import type { Column, FourShares } from './columns.js';

/**
 * Up to four shares used, each `times x column + plus`: which is the greatest, and whether it is within. Calls back for rows whose
 * greatest share is too near to one, and for rows whose two greatest are too near to each other.
 */
export function judgeFour(
  shares: FourShares,
  whose: Uint16Array,
  holds: Uint8Array,
  held: number,
  share: number,
  rows: number,
  nearLimit: (row: number) => void,
  nearTie: (row: number) => void,
): void {
  const { column: a, times: at, plus: ap } = shares[0];
  const { column: b, times: bt, plus: bp } = shares[1];
  const { column: c, times: ct, plus: cp } = shares[2];
  const { column: d, times: dt, plus: dp } = shares[3];
  const low = 1 - 2 * share;
  const high = 1 + 2 * share;
  for (let i = 0; i < rows; i += 1) {
    const p = at * (a[i] as number) + ap;
    const q = bt * (b[i] as number) + bp;
    const r = ct * (c[i] as number) + cp;
    const s = dt * (d[i] as number) + dp;
    let first = p;
    let next = q;
    let who = 0;
    if (q > p) {
      first = q;
      next = p;
      who = 1;
    }
    if (r > first) {
      next = first;
      first = r;
      who = 2;
    } else if (r > next) next = r;
    if (s > first) {
      next = first;
      first = s;
      who = 3;
    } else if (s > next) next = s;
    whose[i] = who;
    holds[i] = first > high ? 0 : held;
    if (first > low && first <= high) nearLimit(i);
    if (first - next <= share * Math.abs(first)) nearTie(i);
  }
}

/** The same from the greatest and the second greatest share, where there are more than four. */
export function verdicts(
  most: Column,
  second: Column,
  holds: Uint8Array,
  held: number,
  share: number,
  rows: number,
  nearLimit: (row: number) => void,
  nearTie: (row: number) => void,
): void {
  const [low, high] = [1 - 2 * share, 1 + 2 * share];
  for (let i = 0; i < rows; i += 1) {
    const used = most[i] as number;
    holds[i] = used > high ? 0 : held;
    if (used > low && used <= high) nearLimit(i);
    if (used - (second[i] as number) <= share * Math.abs(used)) nearTie(i);
  }
}

/** Verdicts by a reserve: over below the edge, too near around it. */
export function below(
  reserve: Column,
  edge: number,
  holds: Uint8Array,
  rows: number,
  near: (row: number) => void,
): void {
  for (let i = 0; i < rows; i += 1) {
    const left = reserve[i] as number;
    if (left > edge) continue;
    if (left < -edge) holds[i] = 0;
    else near(i);
  }
}
