import type { Note } from '../../ratings/index.js';
import type { AnyLength, AnyWeight, Decision, Derived } from '../../trace/index.js';
import type { Findings } from '../checks/checks-or-missing.js';

import type { BarSetting } from './bar-setting.js';

export interface WeightDistributionQuestion {
  /** The axles of the truck alone, people and cargo aboard. */
  readonly front: AnyWeight;
  readonly rear: AnyWeight;
  readonly gross: AnyWeight;
  readonly tongue: AnyWeight;
  /** Hitch parts carried by the ball that were not on the truck when it was weighed. */
  readonly hitchHardware?: AnyWeight | undefined;
  readonly wheelbase: AnyLength;
  readonly overhang: AnyLength;
  /** Ball to the centre of the trailer's axles. */
  readonly axlesAt: AnyLength;
  readonly bars: BarSetting;
  /** The trailer axles' rating is that of the group; each axle has its own check in the axles chapter. */
  readonly ratings?:
    | {
        readonly front?: AnyWeight | undefined;
        readonly rear?: AnyWeight | undefined;
        readonly trailerAxles?: AnyWeight | undefined;
      }
    | undefined;
}

/** The three scale platforms. */
export interface RigLoads {
  readonly front: Derived<'lb'>;
  readonly rear: Derived<'lb'>;
  readonly trailerAxles: Derived<'lb'>;
}

export interface WeightDistribution {
  readonly moment: Derived<'lb*in'>;
  readonly ontoTrailer: Derived<'lb'>;
  readonly ontoFront: Derived<'lb'>;
  readonly offRear: Derived<'lb'>;
  /** Share of the load the tongue took off the front axle that the bars return; absent when it took none. */
  readonly restored?: Derived<'ratio'>;
  readonly barsOff: RigLoads;
  readonly barsOn: RigLoads;
  /** Front, rear and trailer axles with bars off; front and trailer axles with bars on. The rear axle is never credited with the bars. */
  readonly findings: { readonly barsOff: Findings; readonly barsOn: Findings };
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}
