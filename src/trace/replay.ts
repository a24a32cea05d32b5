/** Recomputing a figure from its leaves: the proof that the working is what was computed. */

import type { Decimal } from '../units/decimal.js';
import type { Quantity, Unit } from '../units/index.js';
import { ofDecimal } from '../units/internal.js';
import type { Derived, Node } from './node.js';
import { decimalReading, readNode } from './reading.js';

/**
 * What does the working give when every step is done again from the leaves?
 *
 * @param changed figures to put in place of leaves, by their path in the spec, in the unit of that leaf
 * @example compare(replay(grossWeight), grossWeight.value) // 0, for every working
 */
export function replay<U extends Unit>(derived: Derived<U>, changed?: ReadonlyMap<string, Decimal>): Quantity<U> {
  return ofDecimal(figureWith(derived.why, changed), derived.value.unit);
}

/** The bare figure of a node, read again from its leaves with other figures at some paths. @example figureWith(grossWeight.why, new Map()) // 12400 */
export function figureWith(node: Node, changed?: ReadonlyMap<string, Decimal>): Decimal {
  const leafOf = (leaf: Node): Decimal | undefined =>
    leaf.kind === 'given' && leaf.path !== undefined ? changed?.get(leaf.path) : undefined;
  return readNode(node, decimalReading, new Map(), changed === undefined ? undefined : leafOf);
}

/** Every node of a working, leaves first, each once. @example nodesOf([grossWeight.why]).length // 3 */
export function nodesOf(roots: readonly Node[]): readonly Node[] {
  const seen = new Set<Node>();
  const visit = (node: Node): void => {
    if (seen.has(node)) return;
    if (node.kind === 'computed') node.of.forEach(visit);
    seen.add(node);
  };
  roots.forEach(visit);
  return [...seen];
}
