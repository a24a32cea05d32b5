/** The figures of a spec that has been read, by the path of their keys. */
import type { Given } from '../trace/index.js';
import type { Spec } from './spec.js';

/** Every figure of a spec that has been read, by its path. @example leavesOf(orThrow(decodeSpec(spec))).has('trailer.gvwr') // true */
export function leavesOf(spec: Spec): ReadonlyMap<string, Given> {
  const leaves = new Map<string, Given>();
  const visit = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    if ('why' in part) {
      const { why } = part as { why: Given };
      if (why.kind === 'given' && why.path !== undefined) leaves.set(why.path, why);
      return;
    }
    Object.values(part).forEach(visit);
  };
  visit(spec);
  return leaves;
}
