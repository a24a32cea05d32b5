/** A spec that has been read, with some of its figures replaced. */
import type { DecodedSpec } from '../spec/index.js';
import type { Derived, Given } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { type Decimal, ofDecimal } from '../units/internal.js';

const isLeaf = (part: object): part is Derived<Unit> => 'why' in part;

/**
 * The spec with other figures at some paths, in the units of the leaves that stand there. All else is shared with the spec
 * it came from, which never changes.
 */
export function withFigures(spec: DecodedSpec, figures: ReadonlyMap<string, Decimal>): DecodedSpec {
  const inside = new Set<string>();
  for (const path of figures.keys()) {
    const keys = path.split('.');
    for (let n = 0; n <= keys.length; n += 1) inside.add(keys.slice(0, n).join('.'));
  }
  const visit = (part: unknown, path: string): unknown => {
    if (typeof part !== 'object' || part === null || !inside.has(path)) return part;
    if (isLeaf(part)) {
      const figure = figures.get(path);
      if (figure === undefined) return part;
      const why = { ...(part.why as Given), written: undefined, value: ofDecimal(figure, part.value.unit) };
      return { value: why.value, why };
    }
    const below = (key: string | number): string => (path === '' ? String(key) : `${path}.${key}`);
    if (Array.isArray(part)) return part.map((each, i) => visit(each, below(i)) as unknown);
    return Object.fromEntries(Object.entries(part).map(([key, each]) => [key, visit(each, below(key))]));
  };
  return visit(spec, '') as DecodedSpec;
}
