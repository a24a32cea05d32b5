/** Payload under each limit as a function of the tongue share, in plain numbers for a picture. */
import type { LadenLimit } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';
import { plain } from '../drawing/numbers.js';

export interface Curve {
  readonly name: string;
  readonly payload: (share: number) => number;
}

/**
 * `L - W0` on gross, L on the payload, `L / t - W0` on the tongue, `(L + q W0) / (1 + q - t (1 - k)) - W0` on the axles; k the
 * part that bars put back, q what a pound of load adds on a side. What must press is no limit on the payload.
 */
export function curveOf({ name, on, limit, returned, lean }: LadenLimit, curb: Derived<'lb'>): Curve {
  const [most, empty] = [plain(limit), plain(curb)];
  const [k, q] = [returned === undefined ? 0 : plain(returned), lean === undefined ? 0 : plain(lean)];
  const gross = {
    gross: () => most,
    payload: () => most + empty,
    axles: (share: number) => (most + q * empty) / (1 + q - share * (1 - k)),
    tongue: (share: number) => most / Math.max(1e-6, share),
  } as const;
  return { name, payload: (share) => gross[on](share) - empty };
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
