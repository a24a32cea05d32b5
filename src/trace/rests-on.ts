/** What an answer rests on. */
import type { Unit } from '../units/index.js';
import { collected } from '../units/internal.js';
import type { Basis } from './basis.js';
import type { Derived, Given, LookedUp } from './node.js';
import { nodesOf } from './replay.js';

/** The weakest basis in a working, and the inputs that have it. */
export interface WeakestInputs {
  readonly basis: Basis;
  readonly inputs: readonly (Given | LookedUp)[];
}

/**
 * Which inputs have the weakest basis?
 *
 * @returns the weakest basis among the leaves, and every leaf that has it. Numbers that belong to a formula do not count.
 * @example weakestInputs(grossWeight).basis // stated, and the input is the machine weight
 */
export function weakestInputs<U extends Unit>(derived: Derived<U>): WeakestInputs {
  const leaves = nodesOf([derived.why]).filter(
    (node): node is Given | LookedUp => node.kind === 'given' || node.kind === 'looked up',
  );
  return { basis: derived.why.basis, inputs: leaves.filter((leaf) => leaf.basis === derived.why.basis) };
}

/** The keys of a spec that a figure rests on, in the order the working names them. @example pathsBehind([given('GVWR', lb(14000), 'label', 'trailer.gvwr')])[0] // trailer.gvwr */
export function pathsBehind(figures: readonly Derived<Unit>[]): readonly string[] {
  const paths = collected(nodesOf(figures.map(({ why }) => why)), (node) =>
    node.kind === 'given' && node.path !== undefined ? [node.path] : [],
  );
  return [...new Set(paths)];
}
