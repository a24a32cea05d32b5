/** Paths into a spec as JSON: what figures there are, and the spec with some of its parts changed. */
import type { Spec } from '../assessment/index.js';
import type { Given } from '../trace/index.js';

/** Every figure of a spec that has been read, by its path. */
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

/** A copy of the JSON with the part at each path replaced; missing records on the way are made, lists are not lengthened. */
export function changed(base: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  const copy = structuredClone(base);
  for (const [path, part] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() as string;
    let place = copy as Record<string, unknown>;
    for (const key of keys) {
      if (!Object.hasOwn(place, key) || typeof place[key] !== 'object' || place[key] === null) place[key] = {};
      place = place[key] as Record<string, unknown>;
    }
    if (last !== '__proto__') place[last] = structuredClone(part);
  }
  return copy;
}
