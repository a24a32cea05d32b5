/** Something with a weight and a place: a part of the trailer, a machine, a toolbox; or a trailer known by its two scale readings. */
import type { AnyLength, AnyWeight } from '../../trace/index.js';

/** An item whose centre of gravity is known, measured behind the coupler. */
export interface PlacedItem {
  readonly name: string;
  readonly weight: AnyWeight;
  readonly at: AnyLength;
}

/** An item known by its weight and its tongue load: the trailer as weighed. */
export interface CoupledItem {
  readonly name: string;
  readonly weight: AnyWeight;
  readonly tongue: AnyWeight;
}

/** Anything with a weight and a known effect on the coupler. */
export type Item = PlacedItem | CoupledItem;
