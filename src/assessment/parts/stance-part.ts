/** How the laden trailer stands: side to side, off level, and how its weight is spread along it. */
import type { TandemSplit } from '../../axles/index.js';
import type { WheelShares, YawInertia } from '../../load/index.js';
import type { Part } from './part-of-answer.js';

export interface StancePart extends Part {
  /** What the left and the right wheels carry. */
  readonly sides?: WheelShares;
  /** What each axle carries with the ball off the height at which the trailer stands level. */
  readonly offLevel?: TandemSplit;
  /** The spread of weight along the trailer, for comparing layouts. */
  readonly yaw?: YawInertia;
}
