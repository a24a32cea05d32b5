/** What one limit of the tow side allows. */
import type { Bound, RatingKind } from '../../ratings/index.js';
import type { Decision } from '../../trace/index.js';
import type { NotChecked } from '../checks/checks-or-missing.js';

/** What one limit allows. */
export interface TowBound extends Bound {
  /** The rating it comes from, or the axle that would lift. */
  readonly name: RatingKind | 'tow vehicle front axle lifts';
  /** Whether `limit` is the trailer gross weight or the tongue load at which that rating is reached. */
  readonly on: 'gross' | 'tongue';
}

export interface TowBounds {
  readonly bounds: readonly TowBound[];
  /** Tongue loads not to fall below: a front axle over its rating without a trailer, which a ball behind relieves. */
  readonly least: readonly Bound[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}
