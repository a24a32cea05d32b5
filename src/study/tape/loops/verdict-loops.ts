/** Loops that give each row its verdict. */
import type { Column } from './columns.js';

/**
 * From the greatest share used to the verdict: within below one, over above it. Calls back for rows too near to one, and for
 * rows whose two greatest shares are too near to each other.
 */
export function verdicts(
  most: Column,
  second: Column,
  holds: Uint8Array,
  share: number,
  rows: number,
  nearLimit: (row: number) => void,
  nearTie: (row: number) => void,
): void {
  const [low, high] = [1 - 2 * share, 1 + 2 * share];
  for (let i = 0; i < rows; i += 1) {
    const used = most[i] as number;
    if (used > low) {
      if (used > high) holds[i] = 0;
      else nearLimit(i);
    }
    if (used - (second[i] as number) <= share * (used < 0 ? -used : used)) nearTie(i);
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
