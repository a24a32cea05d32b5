/** What an assessment says about the tow side. */
import type { HitchedAxleLoads, LargestTrailer, WeightDistribution } from '../../towing/index.js';
import type { Derived } from '../../trace/index.js';
import type { Part } from './part-of-answer.js';

/** The tongue load and the tow vehicle's axles with the ball off level. */
export interface OffLevelHitch {
  /** The load on the ball, in lb. */
  readonly tongue: Derived<'lb'>;
  /** The tow vehicle's axles, bars off. */
  readonly hitched?: HitchedAxleLoads | undefined;
  /** The same with the bars set. */
  readonly barsOn?: { readonly front: Derived<'lb'>; readonly rear: Derived<'lb'> } | undefined;
}

export interface TowPart extends Part {
  /** The axles of the tow vehicle with the trailer on the ball, bars off, in lb. */
  readonly hitched?: HitchedAxleLoads | undefined;
  /** Tow vehicle and trailer together, in lb. */
  readonly combination?: Derived<'lb'> | undefined;
  /** What the weight distributing bars move, where their setting is known. */
  readonly bars?: WeightDistribution | undefined;
  /** The part of the tongue load that the bars put back on the trailer axles. */
  readonly shareReturnedByBars?: Derived<'ratio'> | undefined;
  /** The heaviest trailer that this tow vehicle and hitch allow, in lb. */
  readonly largest?: LargestTrailer | undefined;
  /** The same hitch with the ball above or below its level height. */
  readonly offLevel?: OffLevelHitch | undefined;
}
