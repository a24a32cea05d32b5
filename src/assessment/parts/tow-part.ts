/** What an assessment says about the tow side. */
import type { HitchedAxleLoads, LargestTrailer, WeightDistribution } from '../../towing/index.js';
import type { Derived } from '../../trace/index.js';
import type { Part } from './part-of-answer.js';

/** The tongue load and the tow vehicle's axles with the ball off level. */
export interface OffLevelHitch {
  readonly tongue: Derived<'lb'>;
  /** The tow vehicle's axles, bars off. */
  readonly hitched?: HitchedAxleLoads;
  /** The same with the bars set. */
  readonly barsOn?: { readonly front: Derived<'lb'>; readonly rear: Derived<'lb'> };
}

export interface TowPart extends Part {
  readonly hitched?: HitchedAxleLoads;
  readonly combination?: Derived<'lb'>;
  readonly bars?: WeightDistribution;
  /** The part of the tongue load that the bars put back on the trailer axles. */
  readonly shareReturnedByBars?: Derived<'ratio'>;
  readonly largest?: LargestTrailer;
  readonly offLevel?: OffLevelHitch;
}
