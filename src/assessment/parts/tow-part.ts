/** What an assessment says about the tow side. */
import type { HitchedAxleLoads, LargestTrailer, WeightDistribution } from '../../towing/index.js';
import type { Derived } from '../../trace/index.js';
import type { Part } from './part-of-answer.js';

/** The tongue load and the tow vehicle's axles with the ball off level. */
export interface OffLevelHitch {
  /** The load on the ball, in lb. */
  readonly tongue: Derived<'lb'>;
  /** The tow vehicle's axles, bars off. */
  readonly hitched?: HitchedAxleLoads;
  /** The same with the bars set. */
  readonly barsOn?: { readonly front: Derived<'lb'>; readonly rear: Derived<'lb'> };
}

export interface TowPart extends Part {
  /** The axles of the tow vehicle with the trailer on the ball, bars off, in lb. */
  readonly hitched?: HitchedAxleLoads;
  /** Tow vehicle and trailer together, in lb. */
  readonly combination?: Derived<'lb'>;
  /** What the weight distributing bars move, where they are told. */
  readonly bars?: WeightDistribution;
  /** The part of the tongue load that the bars put back on the trailer axles. */
  readonly shareReturnedByBars?: Derived<'ratio'>;
  /** The heaviest trailer that this tow vehicle and hitch allow, in lb. */
  readonly largest?: LargestTrailer;
  /** The same hitch with the ball above or below its level height. */
  readonly offLevel?: OffLevelHitch;
}
