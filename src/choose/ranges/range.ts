/** The least and the most of an answer while its inputs stay within their ends, and where they are reached. */
import { coneOf, type Ends, slopesOf } from './backward.js';
import type { Flat } from './flat.js';
import { forward } from './forward.js';
import { type Interval, point } from './interval.js';

/** What an answer can be. */
export interface Range {
  readonly low: number;
  readonly high: number;
  /** How it can move with each input, by the input's number. */
  readonly slopes: ReadonlyMap<number, Interval>;
  /** The inputs, by number, at which it is least and most; an input that may turn the answer both ways is left out. */
  readonly lowest: ReadonlyMap<number, number>;
  readonly highest: ReadonlyMap<number, number>;
  /** True when both ends are reached: the answer goes one way with every input. */
  readonly reached: boolean;
}

const totalOf = (ends: Ends, at: readonly Interval[]): Interval => {
  let [low, high] = [0, 0];
  for (const [i, counts] of ends) {
    const { low: a, high: b } = at[i] as Interval;
    low += Math.min(counts * a, counts * b);
    high += Math.max(counts * a, counts * b);
  }
  return { low, high };
};

const kinked = new Set(['least', 'greatest', 'round']);
/** Places inside a range, as shares of it, that no formula is made for. */
const shares = [0.137, 0.311, 0.523, 0.719, 0.877, 0.041, 0.953, 0.617];

/**
 * The inputs that cancel out of an answer, such as the place of the axles where tongue and weight are given: their slope is zero
 * at every point tried. A smooth rational formula that is flat at that many arbitrary points is flat. Not used where a `least` or `greatest` chooses a branch.
 */
function fallsOut(
  flat: Flat,
  ends: Ends,
  cone: readonly number[],
  inputs: readonly Interval[],
  asked: readonly number[],
): ReadonlySet<number> {
  if (asked.length === 0 || cone.some((i) => kinked.has(flat.operation[i] ?? ''))) return new Set();
  const left = new Set(asked);
  for (let k = 0; k < shares.length && left.size > 0; k += 1) {
    const at = inputs.map(({ low, high }, i) =>
      point(low + (high - low) * (shares[(i * 3 + k) % shares.length] as number)),
    );
    const there = forward(flat, at, cone);
    const size = 1e-9 * Math.max(1, Math.abs(totalOf(ends, there).low));
    const slopes = slopesOf(flat, ends, cone, there);
    for (const input of left) {
      const { low, high } = inputs[input] as Interval;
      if (Math.abs(slopes.get(input)?.low ?? 0) * (high - low) > size) left.delete(input);
    }
  }
  return left;
}

/** The ends of an answer that is linear in every input: its recorded value, and what each input adds and takes. */
function straightEnds(
  flat: Flat,
  now: number,
  slopes: ReadonlyMap<number, Interval>,
  inputs: readonly Interval[],
): Interval {
  let [low, high] = [now, now];
  for (const [input, { low: slope }] of slopes) {
    const stands = flat.now[input] as number;
    const { low: from, high: to } = inputs[input] as Interval;
    const [a, b] = [slope * (from - stands), slope * (to - stands)];
    low += Math.min(a, b);
    high += Math.max(a, b);
  }
  return { low, high };
}

const recorded = (flat: Flat, ends: Ends): number =>
  ends.reduce((sum, [i, counts]) => sum + counts * (flat.at[i] as number), 0);

/**
 * What can this answer be?
 *
 * An input in which the answer is monotone is set to its ends; the others stay ranges. The result
 * contains the true range, and is the true range where the answer is monotone in every input.
 *
 * @param at what every node can be: from `forward` with the same inputs
 */
export function rangeOf(flat: Flat, ends: Ends, inputs: readonly Interval[], at: readonly Interval[]): Range {
  const cone = coneOf(flat, ends);
  const slopes = slopesOf(flat, ends, cone, at);
  const lowest = new Map<number, number>();
  const highest = new Map<number, number>();
  const [atLowest, atHighest] = [[...inputs], [...inputs]];
  let reached = true;
  let straight = true;
  const unclear = [...slopes].flatMap(([input, { low, high }]) => (low < 0 && high > 0 ? [input] : []));
  const flatIn = fallsOut(flat, ends, cone, inputs, unclear);
  for (const [input, { low, high }] of slopes) {
    const between = inputs[input] as Interval;
    if (between.low === between.high) continue;
    if (low !== high) straight = false;
    if (flatIn.has(input)) {
      const middle = point((between.low + between.high) / 2);
      [atLowest[input], atHighest[input]] = [middle, middle];
      continue;
    }
    if (low < 0 && high > 0) {
      reached = false;
      continue;
    }
    const [least, most] = low >= 0 ? [between.low, between.high] : [between.high, between.low];
    lowest.set(input, least);
    highest.set(input, most);
    atLowest[input] = point(least);
    atHighest[input] = point(most);
  }
  if (straight) {
    const { low, high } = straightEnds(flat, recorded(flat, ends), slopes, inputs);
    return { low, high, slopes, lowest, highest, reached };
  }
  const wide = totalOf(ends, at);
  const low = Math.max(wide.low, totalOf(ends, forward(flat, atLowest, cone)).low);
  const high = Math.min(wide.high, totalOf(ends, forward(flat, atHighest, cone)).high);
  return { low, high, slopes, lowest, highest, reached };
}
