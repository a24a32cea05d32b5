/**
 * Random numbers indexed by seed, row and factor: the figure of row i and factor k depends on the seed, i and k only, so a slice of a
 * study is the same wherever and whenever it is run.
 *
 * The mixing is the finalizer of the well-known 32-bit hashes (multiply, shift, exclusive-or); from memory.
 */

function mix(word: number): number {
  let x = word | 0;
  x = Math.imul(x ^ (x >>> 16), 0x7feb352d);
  x = Math.imul(x ^ (x >>> 15), 0x846ca68b);
  return (x ^ (x >>> 16)) >>> 0;
}

const word = (seed: number, row: number, factor: number, turn: number): number =>
  mix(
    mix(mix(mix(seed + 0x9e3779b9) ^ (row >>> 0)) ^ Math.imul(factor + 1, 0x85ebca6b)) ^
      mix(Math.floor(row / 4294967296) + turn * 0x27d4eb2f),
  );

/** A number from 0 up to but not including 1, in 53 bits. */
export function uniformAt(seed: number, row: number, factor: number): number {
  const high = word(seed, row, factor, 1) >>> 5;
  const low = word(seed, row, factor, 2) >>> 6;
  return (high * 67108864 + low) / 9007199254740992;
}

/**
 * The place of row i in a shuffled order of `count` rows, in constant memory: a four-round Feistel network over the next even
 * power of two, walked until it lands inside.
 */
export function shuffledPlace(seed: number, factor: number, row: number, count: number): number {
  let half = 1;
  while (2 ** (2 * half) < count) half += 1;
  const side = 2 ** half;
  let place = row;
  do {
    let left = Math.floor(place / side);
    let right = place % side;
    for (let round = 0; round < 4; round += 1)
      [left, right] = [right, left ^ (word(seed, right, factor, 10 + round) % side)];
    place = left * side + right;
  } while (place >= count);
  return place;
}

/** The standard normal figure below which the share p lies: the rational approximation of Acklam (relative error below 1.15e-9); from memory. */
export function normalQuantile(p: number): number {
  const a = [
    -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716, 2.506628277459239,
  ] as const;
  const b = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572] as const;
  const c = [
    -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
    2.938163982698783,
  ] as const;
  const d = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416] as const;
  const tail = (q: number): number =>
    (((((c[0] * q + c[1]) * q + c[2]) * q + c[3]) * q + c[4]) * q + c[5]) /
    ((((d[0] * q + d[1]) * q + d[2]) * q + d[3]) * q + 1);
  if (p < 0.02425) return tail(Math.sqrt(-2 * Math.log(Math.max(p, 1e-300))));
  if (p > 1 - 0.02425) return -tail(Math.sqrt(-2 * Math.log(Math.max(1 - p, 1e-300))));
  const q = p - 0.5;
  const r = q * q;
  return (
    ((((((a[0] * r + a[1]) * r + a[2]) * r + a[3]) * r + a[4]) * r + a[5]) * q) /
    (((((b[0] * r + b[1]) * r + b[2]) * r + b[3]) * r + b[4]) * r + 1)
  );
}
