/** Random choices that can be repeated: one seed, one series, the same on every machine and in every release. */

export interface Chance {
  /** A whole number from `low` to `high`, in steps of `step`. */
  readonly whole: (low: number, high: number, step?: number) => number;
  readonly pick: <const L extends readonly [unknown, ...unknown[]]>(list: L) => L[number];
  /** True in so many of a hundred. */
  readonly happens: (percent: number) => boolean;
  /** A record with one key, or an empty one: for optional keys. */
  readonly maybe: <K extends string, T>(percent: number, key: K, make: () => T) => { readonly [P in K]?: T };
}

/** The mulberry32 generator: 32 bits of state, each step a multiply and two shifts. */
function series(seed: number): () => number {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The choices of one seed. */
export function chanceOf(seed: number): Chance {
  const next = series(seed);
  const whole = (low: number, high: number, step = 1): number =>
    low + step * Math.floor(next() * (Math.floor((high - low) / step) + 1));
  const happens = (percent: number): boolean => next() * 100 < percent;
  return {
    whole,
    happens,
    pick: <const L extends readonly [unknown, ...unknown[]]>(list: L): L[number] => list[whole(0, list.length - 1)],
    maybe: <K extends string, T>(percent: number, key: K, make: () => T) =>
      (happens(percent) ? { [key]: make() } : {}) as { readonly [P in K]?: T },
  };
}
