/** The two figures of a payload, and the shares of the tongue that they are asked for. */
import type { Bound } from '../../ratings/index.js';
import type { Decision, Derived } from '../../trace/index.js';

/** The tongue shares the answer is to hold for: one share, or the ends of a band. */
export interface ShareBand {
  readonly low: Derived<'ratio'>;
  readonly high: Derived<'ratio'>;
}

/** A payload and what sets it. */
export interface PayloadBy {
  /** Not above this; negative when the empty trailer is over a limit already. */
  readonly weight: Derived<'lb'>;
  /** The limits that set it, all that tie; two that set it together are one entry. */
  readonly governing: readonly Bound[];
  /** What each limit allows by itself. */
  readonly limits: readonly Bound[];
}

/** The most at the best share of the band. */
export interface BestPayload extends PayloadBy {
  /** The shares at which it holds; absent when the payload is zero or less. */
  readonly shares?: { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> } | undefined;
}

/** Two figures: they are one where one share is asked. */
export interface Payload {
  /** Absent when something lifts at every share at which the ratings allow the most. */
  readonly best?: BestPayload | undefined;
  /** Absent when at some share of the band something lifts. */
  readonly anywhere?: PayloadBy | undefined;
  /** What lifts, where a figure is absent for it. */
  readonly lifts: readonly string[];
  readonly decisions: readonly Decision[];
}
