/** Which points a study visits, addressed by row: any slice of a design can be run anywhere and is the same. */

import type { Design } from './design.js';
import type { Factor } from './factors.js';
import { grid } from './grid.js';
import type { Axis, ChoiceFactor, PlannedDesign } from './planned.js';
import { oneByOne, sampled } from './row-by-row.js';

/** Plans a design. `own` are the spec's own values of the factors. */
export function plan(
  design: Design,
  choices: readonly ChoiceFactor[],
  axes: readonly Axis[],
  factors: readonly Factor[],
  own: readonly number[],
): PlannedDesign {
  switch (design.kind) {
    case 'grid':
      return grid(choices, axes, factors);
    case 'one at a time':
      return oneByOne(choices, axes, factors, own);
    case 'latin hypercube':
    case 'monte carlo':
      return sampled(design, choices, factors);
  }
}
