/** What every outline is turned into before its properties are computed. */
import type { Derived } from '../trace/index.js';
import type { AxisKind } from './compose.js';
import type { Demand } from './figures.js';
import type { Part } from './parts.js';

/** An outline taken apart. The parts are made only when the demands are met. */
export interface Taken {
  readonly demands: readonly Demand[];
  /** Demands that stand on figures which only make sense when the first ones are met. */
  readonly further?: () => readonly Demand[];
  readonly parts: () => readonly Part[];
  /** The parts whose area is weighed, when it is not that of the properties: the nominal wall of a tube. */
  readonly weighed?: () => readonly Part[];
  readonly width: Derived<'in'>;
  readonly height: Derived<'in'>;
  readonly across: AxisKind;
  readonly up: AxisKind;
}
