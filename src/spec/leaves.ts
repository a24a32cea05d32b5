/** The figures of a spec that has been read, by the path of their keys. */
import type { Derived, Given, Node } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { givenBehind } from './codec/figure.js';
import type { DecodedSpec } from './types/spec.js';

/** The key that a figure of a spec was read from: itself, or what it was converted from. @example leafBehind(orThrow(decodeSpec(spec)).trailer.gvwr).path // trailer.gvwr */
export const leafBehind = ({ why }: Derived<Unit>): Given | undefined => givenBehind(why);

/** Those of specs that have been read: what was read does not change. */
const known = new WeakMap<DecodedSpec, ReadonlyMap<string, Given>>();

/** Every figure of a spec that has been read, by its path. @example leavesOf(orThrow(decodeSpec(spec))).has('trailer.gvwr') // true */
export function leavesOf(spec: DecodedSpec): ReadonlyMap<string, Given> {
  const before = known.get(spec);
  if (before !== undefined) return before;
  const leaves = new Map<string, Given>();
  const visit = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    if (Object.hasOwn(part, 'why')) {
      const leaf = givenBehind((part as { readonly why: Node }).why);
      if (leaf?.path !== undefined) leaves.set(leaf.path, leaf);
      return;
    }
    for (const inside of Object.values(part)) visit(inside);
  };
  visit(spec);
  known.set(spec, leaves);
  return leaves;
}
