/** A spec that has been read, with some of its figures replaced. */
import type { DecodedSpec } from '../spec/index.js';
import { converted, type Derived, type Given } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { type Decimal, ofDecimal } from '../units/internal.js';

const isLeaf = (part: object): part is Derived<Unit> => 'why' in part;

/** A leaf with another figure; one that the reader has converted is converted again. */
function leafWith(leaf: Derived<Unit>, figure: Decimal): Derived<Unit> {
  const { why } = leaf;
  if (why.kind === 'computed') {
    const [inside] = why.of;
    if (why.operation !== 'convert' || inside === undefined) return leaf;
    const given = leafWith({ value: inside.value, why: inside }, figure);
    return converted(why.symbol ?? null, given as Derived<'kg'>, leaf.value.unit as 'lb');
  }
  const changed = { ...(why as Given), written: undefined, value: ofDecimal(figure, leaf.value.unit) };
  return { value: changed.value, why: changed };
}

/**
 * The spec with other figures at some paths, in the units of the leaves they replace. All else is shared with the spec
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
      return figure === undefined ? part : leafWith(part, figure);
    }
    const below = (key: string | number): string => (path === '' ? String(key) : `${path}.${key}`);
    if (Array.isArray(part)) return part.map((each, i) => visit(each, below(i)) as unknown);
    return Object.fromEntries(Object.entries(part).map(([key, each]) => [key, visit(each, below(key))]));
  };
  return visit(spec, '') as DecodedSpec;
}
