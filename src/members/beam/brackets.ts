/** Step functions: a load counts at a place only as far as the place lies beyond it. Moment and elastic curve in one formula each. */
import { constant, type Derived, greatestOf, minus, over, plus, result, times } from '../../trace/index.js';
import { inch } from '../../units/index.js';
import type { Placed } from './loads.js';
import type { Reactions } from './reactions.js';
import type { Supports } from './spans.js';

const zero = constant(inch(0));

/** How far x lies beyond a place; zero when it does not. */
export const beyond = (x: Derived<'in'>, place: Derived<'in'>): Derived<'in'> => greatestOf([minus(x, place), zero]);

const timesCube = (force: Derived<'lbf'>, b: Derived<'in'>): Derived<'lbf*in3'> => times(force, b, b, b);

/** `M(x) = R <x - a> - P <x - p> - w/2 (<x - s>^2 - <x - e>^2)`; sagging is positive. */
export function momentAt(
  name: string,
  x: Derived<'in'>,
  loads: readonly Placed[],
  supports: Supports,
  reactions: Reactions,
): Derived<'lbf*in'> {
  const held = plus(times(reactions.left, beyond(x, supports.left)), times(reactions.right, beyond(x, supports.right)));
  const taken = loads.map((load): Derived<'lbf*in'> => {
    if (load.kind === 'point') return times(load.force, beyond(x, load.at));
    const [s, e] = [beyond(x, load.from), beyond(x, load.to)];
    const squares = (b: Derived<'in'>): Derived<'lbf*in'> => times(load.intensity, b, b);
    return over(minus(squares(s), squares(e)), 2);
  });
  return result(`moment at ${name}`, minus(held, plus(...taken)));
}

/** The moment integrated twice: `R/6 <>^3 - P/6 <>^3 - w/24 (<x - s>^4 - <x - e>^4)`. */
export function twiceIntegrated(
  symbol: string,
  x: Derived<'in'>,
  loads: readonly Placed[],
  supports: Supports,
  reactions: Reactions,
): Derived<'lbf*in3'> {
  const held = plus(
    timesCube(reactions.left, beyond(x, supports.left)),
    timesCube(reactions.right, beyond(x, supports.right)),
  );
  const taken = loads.map((load): Derived<'lbf*in3'> => {
    if (load.kind === 'point') return timesCube(load.force, beyond(x, load.at));
    const fourths = (b: Derived<'in'>): Derived<'lbf*in3'> => timesCube(times(load.intensity, b), b);
    return over(minus(fourths(beyond(x, load.from)), fourths(beyond(x, load.to))), 4);
  });
  return result(symbol, over(minus(held, plus(...taken)), 6));
}
