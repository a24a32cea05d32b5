/**
 * What limits the place of a machine, each as one straight line in the machine's weight.
 *
 * Every weight limit is a bound on the tongue load, T = p0 + p1 P. With `T a = M0 + P (a - x)` the place is
 * `x = a (1 - p1) + (M0 - p0 a) / P`: a base place and a moment divided by the machine weight. Deck limits have no
 * moment. The window uses the lines at one weight; the heaviest machine is where two lines cross.
 */
import type { Limits, Rating, RatingKind } from '../../ratings/index.js';
import { type AnyLength, type Derived, minus, over, plus, result, type Source, statics } from '../../trace/index.js';
import type { Guideline } from '../balance/guideline.js';
import type { Item } from '../balance/item.js';
import type { LadenLimit } from '../balance/laden-limit.js';
import type { EndLimit } from './span.js';

/** The rating kinds that limit the tongue load. */
export type TongueRatingKind = { [K in RatingKind]: Limits[K] extends 'tongue' ? K : never }[RatingKind];

/** The trailer before the machine comes on. Places are measured rearward from the coupler or ball. */
export interface TrailerForPlacing {
  /** The trailer itself and whatever else stays where it is. */
  readonly items: readonly Item[];
  /** Coupler to the centre of the axle group. */
  readonly axlesAt: AnyLength;
  /** Front and rear end of the usable deck. */
  readonly deck: { readonly front: AnyLength; readonly rear: AnyLength };
  /** The tongue shares to keep to, with their source; or the plain statement that none is used. */
  readonly guideline: Guideline | 'no guideline';
  readonly tongueLimits: readonly Rating<TongueRatingKind>[];
  /** Every other limit on the laden trailer: what tow vehicle and jack leave for the tongue, axles and sides in every way of standing, what must press; q is what a pound of the machine adds on a side. */
  readonly limits?: readonly LadenLimit[] | undefined;
  /** What the axles may carry together: `axleGroup(...)` says it for equalised axles. */
  readonly axleLimits: readonly Rating<'axle group'>[];
}

/** The machine apart from its weight. The balance point is found with the attachment that travels. */
export interface MachineShape {
  readonly length: AnyLength;
  /** Machine front to its balance point. */
  readonly balancePoint: AnyLength;
  /** How far the true balance point may lie from that, either way. Zero when it was weighed. */
  readonly uncertainty: AnyLength;
}

/** One limit on the place of the balance point: `at = base + moment / machine weight`. */
export interface PlacementLimit {
  readonly name: string;
  /** `front`: the balance point may be no further forward. `rear`: no further back. */
  readonly end: 'front' | 'rear';
  readonly by: 'weight' | 'deck';
  readonly base: Derived<'in'>;
  readonly moment: Derived<'lb*in'>;
  readonly source: Source | undefined;
}

/** A limit at one machine weight. */
export type PlacedLimit = PlacementLimit & EndLimit;

/** A limit at one machine weight. The caller has ruled out a weight of zero. */
export function placed(limit: PlacementLimit, machineWeight: Derived<'lb'>): PlacedLimit {
  const at =
    limit.by === 'deck'
      ? limit.base
      : result(`place by ${limit.name}`, plus(limit.base, over(limit.moment, machineWeight)), limit.source ?? statics);
  const { name, end, by, base, moment, source } = limit;
  return { name, end, by, base, moment, source, at };
}

/** The same limit when the balance point may lie `u` to either side: weight limits close in by `u`, the deck does not. */
export function madeSure(limit: PlacementLimit, u: Derived<'in'>): PlacementLimit {
  if (limit.by === 'deck') return limit;
  const base =
    limit.end === 'front'
      ? result(`sure base place by ${limit.name}`, plus(limit.base, u))
      : result(`sure base place by ${limit.name}`, minus(limit.base, u));
  return { ...limit, base };
}
