/** Step functions: a load counts at a place only as far as the place lies beyond it. Moment and elastic curve in one formula each. */
import { type Derived, greatestOf, minus, over, plus, result, times, zeroIn } from '../../trace/index.js';
import type { Placed } from './loads.js';
import type { Reactions } from './reactions.js';
import type { Supports } from './spans.js';

/** `<x - place>`: how far x lies beyond a place; zero when it does not. */
export const beyond = (x: Derived<'in'>, place: Derived<'in'>): Derived<'in'> =>
  greatestOf([minus(x, place), zeroIn('in')]);

/** `M(x) = R <x - a> - P <x - p> - (w <x - s>^2 - w <x - e>^2) / 2`; sagging is positive. */
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
    const [w, s, e] = [load.intensity, beyond(x, load.from), beyond(x, load.to)];
    return over(minus(times(w, s, s), times(w, e, e)), 2);
  });
  return result(`moment at ${name}`, minus(held, plus(...taken)));
}

const timesCube = (force: Derived<'lbf'>, b: Derived<'in'>): Derived<'lbf*in3'> => times(force, b, b, b);

/** The moment integrated twice: `(R <x - a>^3 - P <x - p>^3 - (w <x - s>^4 - w <x - e>^4) / 4) / 6`. */
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
    const [w, s, e] = [load.intensity, beyond(x, load.from), beyond(x, load.to)];
    return over(minus(timesCube(times(w, s), s), timesCube(times(w, e), e)), 4);
  });
  return result(symbol, over(minus(held, plus(...taken)), 6));
}
