/** The places that matter: ends, supports, point loads, ends of spread loads, midspan, places asked for. */
import {
  type AnyLength,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  over,
  plus,
  result,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { Placed } from './loads.js';
import type { Supports } from './spans.js';

export interface Station {
  readonly name: string;
  readonly at: Derived<'in'>;
  /** A support: the deflection is zero here. */
  readonly held?: true;
}

/** Keeps the decisions that were taken on the way. */
export type Keep = (decision: Decision) => boolean;

/** Puts a place in its order; two names for one place become one station. */
export function insert(list: readonly Station[], next: Station, keep: Keep): readonly Station[] {
  for (const [i, here] of list.entries()) {
    if (keep(decide(next.at, '=', here.at)))
      return [
        ...list.slice(0, i),
        { ...here, ...next, at: here.at, name: `${here.name}, ${next.name}` },
        ...list.slice(i + 1),
      ];
    if (keep(decide(next.at, '<', here.at))) return [...list.slice(0, i), next, ...list.slice(i)];
  }
  return [...list, next];
}

/** All fixed places in order from the left. */
export function fixedStations(
  loads: readonly Placed[],
  supports: Supports,
  alsoAt: readonly AnyLength[],
  keep: Keep,
): readonly Station[] {
  const places: Station[] = [
    { name: 'left end', at: constant(inch(0)) },
    { name: 'left support', at: supports.left, held: true },
    { name: 'midspan', at: result('midspan', plus(supports.left, over(supports.span, 2))) },
    { name: 'right support', at: supports.right, held: true },
    { name: 'right end', at: supports.end },
    ...collected(loads, (load): Station[] =>
      load.kind === 'point'
        ? [{ name: load.name, at: load.at }]
        : [
            { name: `start of ${load.name}`, at: load.from },
            { name: `end of ${load.name}`, at: load.to },
          ],
    ),
    ...alsoAt.map((at, i): Station => ({ name: `place ${i + 1}`, at: inInches(`place ${i + 1}`, at) })),
  ];
  return places.reduce<readonly Station[]>((list, next) => insert(list, next, keep), []);
}
