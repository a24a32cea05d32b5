/** How the axles of one trailer are sprung, as far as it decides how they share a load. */
import type { AnyLength, AnyLineWeight } from '../../trace/index.js';

/** Rockers or walking beams between the springs: loads stay alike whatever the attitude. */
export interface Equalised {
  readonly suspension: 'equalised';
  readonly axles: number;
}

/** Two axles on rockers with unequal arms: pivot to the front spring, pivot to the rear spring. */
export interface UnequalRockers {
  readonly suspension: 'unequal rockers';
  readonly frontArm: AnyLength;
  readonly rearArm: AnyLength;
}

/** Equal independent axles on a level trailer: no spring rates needed for one or two. */
export interface IndependentLevel {
  readonly suspension: 'independent, level';
  readonly axles: number;
}

/** Independent axles with known springs, and the ball above (+) or below (-) the height at which the trailer is level. */
export interface IndependentSprung {
  readonly suspension: 'independent';
  readonly axles: readonly { readonly at: AnyLength; readonly rate: AnyLineWeight }[];
  readonly ballAboveLevel: AnyLength;
}

export type Suspension = Equalised | UnequalRockers | IndependentLevel | IndependentSprung;
