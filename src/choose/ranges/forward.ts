/** A forward pass: what every step can give while the inputs stay within their ends. */
import type { Computed } from '../../trace/index.js';
import { type Flat, factorOf } from './flat.js';
import {
  arcSine,
  arcTangent,
  cosine,
  type Interval,
  minus,
  over,
  plus,
  point,
  power,
  root,
  sine,
  tangent,
  times,
} from './interval.js';

/** The next multiple of a step on the side that the mode asks for. */
function roundedTo(a: number, step: number, mode: string): number {
  const steps = a / step;
  if (mode === 'down') return Math.floor(steps + 1e-9) * step;
  return (mode === 'up' ? Math.ceil(steps - 1e-9) : Math.round(steps)) * step;
}

function rounded(node: Computed, a: Interval): Interval {
  const { step, mode } = node.rounding as NonNullable<Computed['rounding']>;
  const size = step.toNumber();
  // A half may go either way in doubles: one step more on either side where the ends are no multiples.
  const slack = mode === 'down' || mode === 'up' ? 0 : size * 1e-9;
  return { low: roundedTo(a.low - slack, size, mode), high: roundedTo(a.high + slack, size, mode) };
}

const least = (parts: readonly Interval[]): Interval => ({
  low: Math.min(...parts.map(({ low }) => low)),
  high: Math.min(...parts.map(({ high }) => high)),
});
const greatest = (parts: readonly Interval[]): Interval => ({
  low: Math.max(...parts.map(({ low }) => low)),
  high: Math.max(...parts.map(({ high }) => high)),
});

/** What one step gives for what its parts can be. */
export function stepOf(node: Computed, parts: readonly Interval[]): Interval {
  const [a, b] = parts as [Interval, Interval];
  switch (node.operation) {
    case 'sum':
      return parts.reduce(plus);
    case 'difference':
      return minus(a, b);
    case 'product':
      return times(a, b);
    case 'quotient':
      return over(a, b);
    case 'least':
      return least(parts);
    case 'greatest':
      return greatest(parts);
    case 'convert':
      return times(a, point(factorOf(node)));
    case 'relabel':
      return a;
    case 'round':
      return rounded(node, a);
    case 'squareRoot':
      return root(a);
    case 'power':
      return power(a, b);
    case 'sine':
      return sine(a);
    case 'cosine':
      return cosine(a);
    case 'tangent':
      return tangent(a);
    case 'arcSine':
      return arcSine(a);
    case 'arcTangent':
      return arcTangent(a);
  }
}

/** What every node of `which` (leaves first) can be, for these ends of the inputs. */
export function forward(flat: Flat, inputs: readonly Interval[], which: readonly number[]): Interval[] {
  const found: Interval[] = [];
  for (const i of which) {
    const input = flat.input[i] as number;
    if (input >= 0) found[i] = inputs[input] as Interval;
    else if (flat.operation[i] === undefined) found[i] = point(flat.at[i] as number);
    else {
      const parts: Interval[] = [];
      for (const part of flat.parts[i] as Int32Array) parts.push(found[part] as Interval);
      found[i] = stepOf(flat.nodes[i] as Computed, parts);
    }
  }
  return found;
}
