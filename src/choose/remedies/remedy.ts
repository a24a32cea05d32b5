/** What would put a rig right, as an answer. */
import type { Assessment } from '../../assessment/index.js';
import type { Changes } from './asking.js';
import type { Who } from './lever.js';

/** One lever of a proposal. */
export interface RemedyStep {
  /** What to do, in words, with the figure to reach. */
  readonly says: string;
  /** Who can do it. */
  readonly who: Who;
}

/** Changes that put the rig right. They were applied and assessed before they are shown. */
export interface Remedy {
  /** One lever, or those that do it together. */
  readonly steps: readonly RemedyStep[];
  /** The parts of the spec to replace, by path. */
  readonly changes: Changes;
  /** The assessment with the changes made: within. */
  readonly assessment: Assessment;
}

/** What would put a rig right. */
export interface Remedies {
  /** The rig as given. */
  readonly now: Assessment;
  /** True when the rig needs no change; then there is no proposal. */
  readonly isWithin: boolean;
  /** What has to be done whatever else is: legs under the tail while loading, more tiedowns. Where these are enough, there is no other proposal. */
  readonly anyhow: readonly RemedyStep[];
  /** Their changes of the spec; every proposal has them too. */
  readonly anyhowChanges: Changes;
  /** The least pull of each lever that does it alone, the one that makes least trouble first. */
  readonly single: readonly Remedy[];
  /** Levers that do it together, where fewer than three do it alone: pairs, the cheapest first; where no pair does, one move and every weak part. */
  readonly together: readonly Remedy[];
  /** How many changed specs were assessed. */
  readonly assessed: number;
  /** True when the count of assessments ran out before every lever was tried. */
  readonly cutShort: boolean;
}
