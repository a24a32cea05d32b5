/** The shape of the leaflet as data. */
import type { Check } from '../ratings/index.js';
import type { Derived } from '../trace/index.js';
import type { Brief, BriefOpen } from './brief-data.js';

/** One bar: a load against its limit. */
export interface LeafletBar {
  /** `whole trailer`, `tongue`, `axle 1` */
  readonly name: string;
  /** The check it shows. */
  readonly check: Check;
}

/** Something to do while loading: a tag for programs, and the figure it refers to. */
export interface LoadingStep {
  /** Which step it is. Stable. */
  readonly tag: 'chock' | 'rear legs' | 'place' | 'tiedowns' | 'weigh the tongue' | 'tires';
  /** The piece or the part that it refers to. */
  readonly of?: string;
  /** The least figure, or the one there is. */
  readonly from?: Derived<'lb' | 'in' | 'psi'>;
  /** The greatest figure, where there are two. */
  readonly to?: Derived<'lb' | 'in'>;
}

/** The leaflet as data. */
export interface Leaflet {
  /** The name of the trailer, and of the job where it has one. */
  readonly names: readonly string[];
  /** The first page it is drawn from: verdict, payload, places. */
  readonly brief: Brief;
  /** Gross, tongue and axles against their limits. */
  readonly bars: readonly LeafletBar[];
  /** The three checks with the least reserve for their limit. */
  readonly tightest: readonly Check[];
  /** What to do while loading, in order. */
  readonly loading: readonly LoadingStep[];
  /** Missing facts, to be filled in by hand. */
  readonly boxes: readonly BriefOpen[];
  /** The date that the caller gives. */
  readonly date: string;
  /** The version of this library. */
  readonly version: string;
  /** The titles of the texts that the figures come from. */
  readonly sources: readonly string[];
  /** The usual cautions. */
  readonly cautions: readonly string[];
}
