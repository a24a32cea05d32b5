/** What the supports bear, from the balance of moments. */
import { type Derived, minus, over, plus, result, statics, times } from '../../trace/index.js';
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
        force: result(`${load.name} resultant`, times(load.intensity, load.length)),
        at: over(plus(load.from, load.to), 2),
      };
}

/** `R_right = sum of F (x - x_left) / span`, `R_left = sum of F (x_right - x) / span`: each from its own balance, divided last. */
export function reactionsOf(loads: readonly Placed[], { left, right, span }: Supports): Reactions {
  const all = loads.map(resultant);
  const aboutLeft = result(
    'moment about the left support',
    plus(...all.map(({ force, at }) => times(force, minus(at, left)))),
  );
  const aboutRight = result(
    'moment about the right support',
    plus(...all.map(({ force, at }) => times(force, minus(right, at)))),
  );
  return {
    left: result('left reaction', over(aboutRight, span), statics),
    right: result('right reaction', over(aboutLeft, span), statics),
  };
}
