/** A member as a beam, and what a beam check says of it. */
import type { Note } from '../../ratings/index.js';
import type { AnyLength, AnyPressure, Decision, Derived, Known } from '../../trace/index.js';
import type { Allowable } from './allowable.js';
import type { Reactions } from './reactions.js';

/** The member as the beam sees it. */
export interface BeamMember {
  /** Modulus of elasticity: 29,000 ksi for steel (common practice). */
  readonly E: AnyPressure;
  readonly I: Known<'in4'>;
  readonly S: Known<'in3'>;
  readonly allowable: Allowable;
  /** Further stations, measured from the left end, in addition to supports, loads and peaks. */
  readonly alsoAt?: readonly AnyLength[];
}

export interface BeamStation {
  readonly name: string;
  /** From the left end. */
  readonly at: Derived<'in'>;
  readonly shearLeft: Derived<'lbf'>;
  readonly shearRight: Derived<'lbf'>;
  /** Sagging is positive. */
  readonly moment: Derived<'lbf*in'>;
  /** Down is positive. */
  readonly deflection: Derived<'in'>;
}

export interface BendingCheck {
  readonly stress: Derived<'psi'>;
  readonly allowable: Allowable;
  readonly reserve: Derived<'psi'>;
  readonly used: Derived<'ratio'>;
  readonly verdict: 'within' | 'over';
}

export interface BeamAnswer {
  /** Up is positive; a negative one is a hold-down. */
  readonly reactions: Reactions;
  readonly stations: readonly BeamStation[];
  /** Without its sign, and where: every station that has it. */
  readonly greatestMoment: { readonly moment: Derived<'lbf*in'>; readonly at: readonly string[] };
  readonly bending: BendingCheck;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}
