/** The chart of payload over tongue share: what part of both is shown, and where it lies on the paper. */
import { plain } from '../drawing/numbers.js';
import type { Setting } from '../drawing/options.js';
import { type Curve, crossings, leastAt, steps } from './curves.js';
import type { SharesToDraw } from './shares.js';

export interface Chart {
  readonly x: (share: number) => number;
  readonly y: (payload: number) => number;
  /** The shares that are drawn. */
  readonly from: number;
  readonly to: number;
  /** The payloads that are drawn. */
  readonly top: number;
  readonly bottom: number;
  /** The frame on the paper. */
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
  readonly width: number;
  readonly narrow: boolean;
  /** The shares at which curves are evaluated: even steps, and every crossing of the least. */
  readonly grid: readonly number[];
}

/** The shares that are drawn: the band and a margin, and where the load is now. */
function shareRange({ band, now }: SharesToDraw): { readonly from: number; readonly to: number } {
  const ends = [plain(band.low), plain(band.high), ...(now === undefined ? [] : [plain(now.share)])];
  return { from: Math.max(0.02, Math.min(...ends) - 0.04), to: Math.min(0.6, Math.max(...ends) + 0.04) };
}

/** Lays the chart out: the least of all limits with a quarter of its spread below and most of it above. */
export function chartOf(data: SharesToDraw, curves: readonly Curve[], { width, narrow }: Setting): Chart {
  const { from, to } = shareRange(data);
  const grid = [...steps(from, to, 40), ...crossings(curves, from, to)].sort((a, b) => a - b);
  const known = [
    ...grid.map((share) => leastAt(curves, share)),
    ...(data.now === undefined ? [] : [plain(data.now.payload)]),
  ];
  const [lowest, highest] = [Math.min(...known), Math.max(...known)];
  const spread = Math.max(highest - lowest, highest * 0.1, 1);
  const [bottom, top] = [lowest - spread * 0.25, highest + spread * 0.8];
  const [left, right, above, below] = [narrow ? 52 : 64, width - (narrow ? 18 : 170), 18, narrow ? 250 : 300];
  return {
    x: (share) => left + ((share - from) / (to - from)) * (right - left),
    y: (payload) => above + ((top - Math.max(bottom, Math.min(top, payload))) / (top - bottom)) * (below - above),
    from,
    to,
    top,
    bottom,
    left,
    right,
    above,
    below,
    width,
    narrow,
    grid,
  };
}
