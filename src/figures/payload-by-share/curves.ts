/** Payload under each limit as a function of the tongue share, in plain numbers for a picture. */
import type { LadenLimit } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';
import { plain } from '../drawing/numbers.js';

export interface Curve {
  readonly name: string;
  readonly payload: (share: number) => number;
}

/** `L - W0` on gross, `L / (1 - t (1 - k)) - W0` on the axles, `L / t - W0` on the tongue; k the part that bars put back. */
export function curveOf({ name, on, limit }: LadenLimit, curb: Derived<'lb'>, returned: number): Curve {
  const [most, empty] = [plain(limit), plain(curb)];
  const parts = {
    gross: () => 1,
    axles: (share: number) => 1 - share * (1 - returned),
    tongue: (share: number) => share,
  } as const;
  const part = parts[on];
  return { name, payload: (share) => most / Math.max(1e-6, part(share)) - empty };
}

/** The least of all at a share. */
export const leastAt = (curves: readonly Curve[], share: number): number =>
  Math.min(...curves.map(({ payload }) => payload(share)));

/** Shares at even steps between two ends, both included. */
export const steps = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

/** Every share at which the least passes from one limit to another, found by halving. */
export function crossings(curves: readonly Curve[], from: number, to: number): readonly number[] {
  const governs = (share: number): string =>
    curves.reduce<{ name: string; least: number }>(
      (best, { name, payload }) => (payload(share) < best.least ? { name, least: payload(share) } : best),
      { name: '', least: Number.POSITIVE_INFINITY },
    ).name;
  const grid = steps(from, to, 60);
  return grid.slice(1).flatMap((end, i) => {
    let [low, high] = [grid[i] ?? from, end];
    if (governs(low) === governs(high)) return [];
    for (let halving = 0; halving < 40; halving += 1) {
      const middle = (low + high) / 2;
      if (governs(middle) === governs(low)) low = middle;
      else high = middle;
    }
    return [high];
  });
}
