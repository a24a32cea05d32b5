/** A remark on an answer: a disagreement between sources, an assumption, a caution. Never a verdict. */
import type { Derived } from '../trace/index.js';
import type { Unit } from '../units/index.js';

export interface Note {
  /** A stable name programs can look for: `MoldedDisagreesWithTable`. */
  readonly tag: string;
  /** The remark in one sentence. */
  readonly says: string;
  /** The figures it refers to. */
  readonly figures?: readonly Derived<Unit>[];
  /** The keys of the spec it refers to: `trailer.gvwr`. */
  readonly paths?: readonly string[];
}

/** A remark with a name programs can look for, and the figures it is about. @example note('RoundedDown', 'The figure was rounded down.').tag // RoundedDown */
export const note = (tag: string, says: string, figures?: readonly Derived<Unit>[] | undefined): Note =>
  Object.freeze(figures === undefined ? { tag, says } : { tag, says, figures: Object.freeze(figures) });
