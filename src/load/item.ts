/** Something with a weight and a place: a part of the trailer, a machine, a toolbox; or a trailer known by its two scale readings. */
import type { AnyLength, AnyWeight } from '../trace/index.js';

/** Known by where its centre of gravity stands, behind the coupler. */
export interface PlacedItem {
  readonly name: string;
  readonly weight: AnyWeight;
  readonly at: AnyLength;
}

/** Known by what it puts on the coupler when it stands alone: the trailer as weighed. */
export interface CoupledItem {
  readonly name: string;
  readonly weight: AnyWeight;
  readonly tongue: AnyWeight;
}

export type Item = PlacedItem | CoupledItem;
