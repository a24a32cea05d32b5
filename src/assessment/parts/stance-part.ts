/** Side-to-side share, loads off level, and yaw inertia of the laden trailer. */
import type { TandemSplit } from '../../axles/index.js';
import type { WheelShares, YawInertia } from '../../load/index.js';
import type { Part } from './part-of-answer.js';

export interface StancePart extends Part {
  /** What the left and the right wheels carry. */
  readonly sides?: WheelShares | undefined;
  /** What each axle carries with the ball above or below its level height. */
  readonly offLevel?: TandemSplit | undefined;
  /** The spread of weight along the trailer, for comparing layouts. */
  readonly yaw?: YawInertia | undefined;
}
