/** Invented figures from a seed: the same seed gives the same figures everywhere. */
import { inch, kg, lb, percent, type Quantity } from '../../units/index.js';

/** Draws round figures, the way people write them. */
export interface Draw {
  /** A whole number from `low` to `high` in steps. */
  readonly whole: (low: number, high: number, step?: number) => number;
  /** One of several. */
  readonly oneOf: <A>(first: A, ...others: readonly A[]) => A;
  /** Pounds, in steps of 50 unless said otherwise. */
  readonly pounds: (low: number, high: number, step?: number) => Quantity<'lb'>;
  /** Kilograms, in steps of 10. */
  readonly kilograms: (low: number, high: number, step?: number) => Quantity<'kg'>;
  /** Whole inches. */
  readonly inches: (low: number, high: number, step?: number) => Quantity<'in'>;
  /** Whole per cents. */
  readonly share: (low: number, high: number) => Quantity<'%'>;
}

/** A stream of numbers from 0 up to 1, by a 32-bit mix of a counter; public-domain arithmetic, written from memory. */
function streamOf(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Draws for a seed. */
export function drawFrom(seed: number): Draw {
  const next = streamOf(seed);
  const whole = (low: number, high: number, step = 1): number =>
    low + step * Math.floor(next() * (Math.floor((high - low) / step) + 1));
  return {
    whole,
    oneOf: (first, ...others) => [first, ...others][whole(0, others.length)] ?? first,
    pounds: (low, high, step = 50) => lb(whole(low, high, step)),
    kilograms: (low, high, step = 10) => kg(whole(low, high, step)),
    inches: (low, high, step = 1) => inch(whole(low, high, step)),
    share: (low, high) => percent(whole(low, high)),
  };
}
