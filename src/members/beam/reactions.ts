/** What the supports bear, from the balance of moments. */
import { type Derived, minus, over, plus, product, quotient, statics, sum, times } from '../../trace/index.js';
import type { Placed } from './loads.js';
import type { Supports } from './spans.js';

export interface Reactions {
  readonly left: Derived<'lbf'>;
  readonly right: Derived<'lbf'>;
}

/** The resultant of a load and where it acts. */
function resultant(load: Placed): { readonly force: Derived<'lbf'>; readonly at: Derived<'in'> } {
  return load.kind === 'point'
    ? load
    : {
        force: product(`${load.name} resultant`, load.intensity, load.length),
        at: over(plus(load.from, load.to), 2),
      };
}

/** `R_right = sum of F (x - x_left) / span`, `R_left = sum of F (x_right - x) / span`: each from its own balance, divided last. */
export function reactionsOf(loads: readonly Placed[], { left, right, span }: Supports): Reactions {
  const all = loads.map(resultant);
  const aboutLeft = sum(
    'moment about the left support',
    all.map(({ force, at }) => times(force, minus(at, left))),
  );
  const aboutRight = sum(
    'moment about the right support',
    all.map(({ force, at }) => times(force, minus(right, at))),
  );
  return {
    left: quotient('left reaction', aboutRight, span, statics),
    right: quotient('right reaction', aboutLeft, span, statics),
  };
}
