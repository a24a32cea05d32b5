/** What a design cannot do: sample no runs, or visit the levels of a distribution that has none. */
import { inShort } from '../../units/internal.js';
import type { UnusableVariation } from '../errors.js';
import type { Design } from './design.js';

const unusable = (path: string, found: string, needed: string): UnusableVariation => ({
  chapter: 'study',
  tag: 'UnusableVariation',
  path,
  found,
  needed,
});

/** What is wrong with a design for these factors; `undefined` when it can be run. */
export function designRefusal(
  design: Design,
  factors: readonly { readonly path: string; readonly levels: number }[],
): UnusableVariation | undefined {
  if (design.kind === 'latin hypercube' || design.kind === 'monte carlo') {
    if (!Number.isInteger(design.runs) || design.runs < 1)
      return unusable('design.runs', inShort(design.runs), 'a whole number of runs');
    if (!Number.isInteger(design.seed)) return unusable('design.seed', inShort(design.seed), 'a whole number');
    return undefined;
  }
  const chance = factors.find(({ levels }) => levels === 0);
  return chance && unusable(chance.path, 'a distribution', 'levels or a range for this design, or a sampled design');
}
