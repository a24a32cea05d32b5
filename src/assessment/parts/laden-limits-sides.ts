/** Limits of each side of a laden trailer, for a load that leans. */
import type { LadenLimit } from '../../load/index.js';
import type { Bound } from '../../ratings/index.js';
import { type Derived, minus, result } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { OffLevel } from './laden-limits-axles.js';
import { type Lb, limitsOn, nothing, type Rig } from './rig.js';

/** One side: what a pound of load adds to twice that side, and what the rest adds. */
export interface Side {
  readonly name: string;
  readonly lean: Derived<'ratio'>;
  /** Twice what stays adds to this side; none when all that leans is the load itself. */
  readonly added: Lb | undefined;
}

/** The tires of each side, and that the side presses. Twice a side is `W - T + q P` and what stays off the middle. */
export function sideLimits(
  { stance, tow: { shareReturnedByBars: returned } }: Rig,
  tires: Lb | undefined,
  off: OffLevel,
  sides: readonly Side[],
): readonly LadenLimit[] {
  const change = stance.offLevel?.tongueChange;
  return collected(sides, ({ name, lean, added }) => {
    const less = (bounds: readonly Bound[]): readonly Bound[] =>
      bounds.map(({ name: what, limit }) => ({
        name: `${what} ${name}`,
        limit: added === undefined ? limit : result(`${what} ${name} less what stays`, minus(limit, added)),
      }));
    const level = less(tires === undefined ? [] : [{ name: 'tires', limit: tires }]);
    const tilted = less(off.tires);
    const presses = less([
      { name: 'side presses', limit: nothing },
      ...(change === undefined ? [] : [{ name: 'side presses off level', limit: change }]),
    ]);
    return [
      ...limitsOn('axles', level, { lean }),
      ...limitsOn('axles', tilted, { lean }),
      ...(returned === undefined
        ? []
        : [
            ...limitsOn('axles', level, { lean, returned }, ' bars on'),
            ...limitsOn('axles', tilted, { lean, returned }, ' and bars on'),
          ]),
      ...limitsOn('axles', presses, { lean, atLeast: true }),
    ];
  });
}
