/** What an answer rests on. */
import type { Unit } from '../units/index.js';
import type { Basis } from './basis.js';
import type { Derived, Given, LookedUp } from './node.js';
import { nodesOf } from './replay.js';

/** The weakest basis in a working, and the inputs that have it. */
export interface WeakestInputs {
  readonly basis: Basis;
  readonly inputs: readonly (Given | LookedUp)[];
}

/**
 * Which inputs is this answer weakest in?
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
