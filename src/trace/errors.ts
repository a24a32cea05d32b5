/** What can go wrong with figures and tables on their way into a working: plain data. */
import type { Unit, WireQuantity } from '../units/index.js';

/** The table has no such row. */
export interface NotTabulated {
  readonly chapter: 'trace';
  readonly tag: 'NotTabulated';
  readonly table: string;
  readonly asked: string;
  /** The nearest rows there are. */
  readonly nearest: readonly string[];
  /** What to do instead: what is missing, or where the figure is found. */
  readonly instead?: string;
  readonly path?: string;
}

/** A figure outside what it can be: a wheelbase of zero, a balance point beyond its machine, ends given the wrong way round. */
export interface OutsideItsRange {
  readonly chapter: 'trace';
  readonly tag: 'OutsideItsRange';
  readonly what: string;
  readonly found: WireQuantity<Unit>;
  /** The least it may be. */
  readonly from?: WireQuantity<Unit>;
  /** The most it may be. */
  readonly to?: WireQuantity<Unit>;
  /** It must be more than this. */
  readonly above?: WireQuantity<Unit>;
  /** It must be less than this. */
  readonly below?: WireQuantity<Unit>;
  readonly path?: string;
}

/** A count that is not a whole number, or not one from one to the most that a trailer may have. */
export interface NotAWholeCount {
  readonly chapter: 'trace';
  readonly tag: 'NotAWholeCount';
  readonly what: string;
  readonly found: string;
  readonly most?: number;
  readonly path?: string;
}

export type TraceError = NotTabulated | OutsideItsRange | NotAWholeCount;
