/** Arithmetic of intervals in doubles: the least and the most that a step can give. */

/** The least and the most; the least never exceeds the most. */
export interface Interval {
  /** The least it may be, in the unit of the figure. */
  readonly low: number;
  /** The most it may be, in the unit of the figure. */
  readonly high: number;
}

/** Means "no end known". Finite, so that no difference or product becomes NaN. */
export const endless = 1e250;
const radian = Math.PI / 180;

const hull = (...ends: readonly number[]): Interval => ({
  low: Math.max(-endless, Math.min(...ends)),
  high: Math.min(endless, Math.max(...ends)),
});
export const everything: Interval = { low: -endless, high: endless };
export const point = (at: number): Interval => ({ low: at, high: at });

export const plus = (a: Interval, b: Interval): Interval => ({ low: a.low + b.low, high: a.high + b.high });
export const minus = (a: Interval, b: Interval): Interval => ({ low: a.low - b.high, high: a.high - b.low });
export const negated = (a: Interval): Interval => ({ low: -a.high, high: -a.low });

export function times(a: Interval, b: Interval): Interval {
  if (a.low === a.high && b.low === b.high) return point(a.low * b.low);
  return hull(a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high);
}

const holdsZero = ({ low, high }: Interval): boolean => low <= 0 && high >= 0;

export function over(a: Interval, b: Interval): Interval {
  if (holdsZero(b)) return everything;
  return hull(a.low / b.low, a.low / b.high, a.high / b.low, a.high / b.high);
}

/** `x^2`, never below zero. */
export function squared(a: Interval): Interval {
  const ends = hull(a.low * a.low, a.high * a.high);
  return holdsZero(a) ? { low: 0, high: ends.high } : ends;
}

export const root = ({ low, high }: Interval): Interval => ({
  low: Math.sqrt(Math.max(0, low)),
  high: Math.sqrt(Math.max(0, high)),
});

/** For a base that is not negative a power goes one way with the base and one way with the exponent: its ends are at corners. */
export function power(a: Interval, b: Interval): Interval {
  const low = Math.max(0, a.low);
  return hull(low ** b.low, low ** b.high, a.high ** b.low, a.high ** b.high);
}

const inside = ({ low, high }: Interval, from: number, to: number): boolean => low >= from && high <= to;

export const sine = (a: Interval): Interval =>
  inside(a, -90, 90) ? { low: Math.sin(a.low * radian), high: Math.sin(a.high * radian) } : { low: -1, high: 1 };
export function cosine(a: Interval): Interval {
  if (!inside(a, -180, 180)) return { low: -1, high: 1 };
  const ends = hull(Math.cos(a.low * radian), Math.cos(a.high * radian));
  return holdsZero(a) ? { low: ends.low, high: 1 } : ends;
}
export const tangent = (a: Interval): Interval =>
  a.low > -90 && a.high < 90 ? { low: Math.tan(a.low * radian), high: Math.tan(a.high * radian) } : everything;
export const arcSine = (a: Interval): Interval => ({
  low: Math.asin(Math.max(-1, a.low)) / radian,
  high: Math.asin(Math.min(1, a.high)) / radian,
});
export const arcTangent = (a: Interval): Interval => ({
  low: Math.atan(a.low) / radian,
  high: Math.atan(a.high) / radian,
});
