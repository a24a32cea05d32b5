/** A backward pass: how an answer can move with each input while the inputs stay within their ends. */
import type { Computed } from '../../trace/index.js';
import { type Flat, factorOf } from './flat.js';
import {
  cosine,
  endless,
  type Interval,
  negated,
  over,
  plus,
  point,
  power,
  root,
  sine,
  squared,
  tangent,
  times,
} from './interval.js';

const one = point(1);
const none = point(0);
/** Goes up or stays: a least, a greatest, a rounding. How fast is not said. */
const upward: Interval = { low: 0, high: 1 };
const radian = point(Math.PI / 180);

/** A part that may be the one taken moves the answer; one that never can be does not; one that always is moves it one for one. */
function picked(parts: readonly Interval[], sign: 1 | -1): readonly Interval[] {
  return parts.map((mine, i) => {
    const others = parts.filter((_, k) => k !== i);
    const best = (a: Interval): number => (sign === 1 ? a.low : -a.high);
    const worst = (a: Interval): number => (sign === 1 ? a.high : -a.low);
    if (others.some((other) => worst(other) < best(mine))) return none;
    return others.every((other) => worst(mine) < best(other)) ? one : upward;
  });
}

function powerRule(a: Interval, b: Interval, whole: Interval): readonly Interval[] {
  const byBase = times(b, power(a, { low: b.low - 1, high: b.high - 1 }));
  const logs = a.low > 0 ? { low: Math.log(a.low), high: Math.log(a.high) } : { low: -endless, high: Math.log(a.high) };
  return [byBase, times(whole, logs)];
}

const inverse = (a: Interval): Interval => (a.low > 0 ? over(one, a) : { low: 0, high: endless });

/** What the partial derivatives of a step can be. */
export function partialsOf(node: Computed, parts: readonly Interval[], whole: Interval): readonly Interval[] {
  const [a, b] = parts as [Interval, Interval];
  switch (node.operation) {
    case 'sum':
      return parts.map(() => one);
    case 'difference':
      return [one, negated(one)];
    case 'product':
      return [b, a];
    case 'quotient':
      return [over(one, b), negated(over(a, squared(b)))];
    case 'least':
      return picked(parts, 1);
    case 'greatest':
      return picked(parts, -1);
    case 'convert':
      return [point(factorOf(node))];
    case 'relabel':
      return [one];
    case 'round':
      return [upward];
    case 'squareRoot':
      return [inverse(times(point(2), root(a)))];
    case 'power':
      return powerRule(a, b, whole);
    case 'sine':
      return [times(cosine(a), radian)];
    case 'cosine':
      return [negated(times(sine(a), radian))];
    case 'tangent':
      return [times(plus(one, squared(tangent(a))), radian)];
    case 'arcSine':
      return [inverse(times(root(plus(one, negated(squared(a)))), radian))];
    case 'arcTangent':
      return [inverse(times(plus(one, squared(a)), radian))];
  }
}

/** What steers an answer: its last steps, each with what it counts. A difference of two answers has two of them. */
export type Ends = readonly (readonly [index: number, counts: number])[];

/** The nodes that an answer is made of, leaves first. */
export function coneOf(flat: Flat, ends: Ends): readonly number[] {
  const inside = new Set<number>();
  const visit = (i: number): void => {
    if (inside.has(i)) return;
    inside.add(i);
    for (const part of flat.parts[i] as Int32Array) visit(part);
  };
  for (const [i] of ends) visit(i);
  return [...inside].sort((a, b) => a - b);
}

/** How the answer can move with each input: by the input's number; inputs that do not come in are left out. */
export function slopesOf(
  flat: Flat,
  ends: Ends,
  cone: readonly number[],
  at: readonly Interval[],
): ReadonlyMap<number, Interval> {
  const adjoints: (Interval | undefined)[] = [];
  for (const [i, counts] of ends) adjoints[i] = plus(adjoints[i] ?? none, point(counts));
  const slopes = new Map<number, Interval>();
  for (let k = cone.length - 1; k >= 0; k -= 1) {
    const i = cone[k] as number;
    const adjoint = adjoints[i];
    if (adjoint === undefined) continue;
    const input = flat.input[i] as number;
    if (input >= 0) slopes.set(input, plus(slopes.get(input) ?? none, adjoint));
    if (flat.operation[i] === undefined) continue;
    const own = flat.parts[i] as Int32Array;
    const parts: Interval[] = [];
    for (const part of own) parts.push(at[part] as Interval);
    partialsOf(flat.nodes[i] as Computed, parts, at[i] as Interval).forEach((partial, n) => {
      const part = own[n] as number;
      adjoints[part] = plus(adjoints[part] ?? none, times(adjoint, partial));
    });
  }
  return slopes;
}
