/** The known loads and ratings of a rig, and the limits on its payload that follow from them. */
import type { LadenLimit } from '../../load/index.js';
import type { Bound, Rating } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { constant, type Decision, type Derived } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import type { Climbers } from './climbers.js';
import type { Stack } from './running-gear.js';
import type { StancePart } from './stance-part.js';
import type { TowPart } from './tow-part.js';

export type Lb = Derived<'lb'>;
export type On = LadenLimit['on'];

/** What an answer knows of the rig before it asks what it may carry. */
export interface Rig {
  readonly spec: DecodedSpec;
  readonly gvwr: Rating<'GVWR'> | undefined;
  readonly stack: Stack;
  readonly tow: TowPart;
  readonly stance: StancePart;
  readonly climbers: Climbers;
}

/** Limits, and the comparisons by which they were chosen. */
export interface FoundLimits {
  readonly limits: readonly LadenLimit[];
  readonly decisions: readonly Decision[];
}

export const nothing = constant(lb(0));

export const limitsOn = (
  on: On,
  bounds: readonly Bound[],
  { returned, lean, atLeast }: Partial<Pick<LadenLimit, 'returned' | 'lean' | 'atLeast'>> = {},
  suffix = '',
): readonly LadenLimit[] =>
  bounds.map(({ name, limit }) => ({ name: `${name}${suffix}`, on, limit, returned, lean, atLeast }));
