/** An outline split into rectangles, triangles and arcs, from which its properties are computed. */
import type { Derived, Guard } from '../../trace/index.js';
import type { MembersError } from '../errors.js';
import type { AxisKind } from './compose.js';
import type { Part } from './parts.js';

/** An outline taken apart. The parts are made only when the guards are met. */
export interface Taken {
  readonly guards: readonly Guard<MembersError>[];
  /** Guards on figures that only exist when the first guards are met. */
  readonly further?: () => readonly Guard<MembersError>[];
  readonly parts: () => readonly Part[];
  /** The parts whose area is weighed, when it is not that of the properties: the nominal wall of a tube. */
  readonly weighed?: () => readonly Part[];
  readonly width: Derived<'in'>;
  readonly height: Derived<'in'>;
  readonly across: AxisKind;
  readonly up: AxisKind;
}
