/** What an assessment says about getting the machine on. */
import type { CrestClearance, RampAngle, RampSpacing, SlopeLoad, TailLift } from '../../load/index.js';
import type { Part } from './part-of-answer.js';

export interface LoadingPart extends Part {
  /** Angle of the ramps; friction the machine needs and its pull down the slope, when the cargo says what climbs. */
  readonly ramps?: (RampAngle & Partial<SlopeLoad>) | undefined;
  /** The clearance of the low point over each edge, of the machine that clears least. */
  readonly edges?: CrestClearance | undefined;
  /** Tongue and truck loads while the machine that pulls the ball up most is on the rear edge. */
  readonly tailLift?: TailLift | undefined;
  /** True when rear legs are set before loading: they take what the ball would be pulled up by, and have a check of their own. */
  readonly onLegs?: boolean | undefined;
  /** Ramp spacings at which every tire of the machine rides on a ramp; of several machines the one that leaves least room. */
  readonly setting?: RampSpacing | undefined;
}
