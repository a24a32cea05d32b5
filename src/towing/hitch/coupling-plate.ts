/** What a European coupling plate prints, what is coupled to it, and what the checks say. */
import type { Note } from '../../ratings/index.js';
import type { AnyLength, AnyWeight, Decision } from '../../trace/index.js';
import type { Findings } from '../checks/checks-or-missing.js';
import type { AnyForce } from './coupling-values.js';

/** What is marked on the coupling; what is not marked is left out. */
export interface CouplingPlate {
  /** D: the pull between vehicle and trailer. */
  readonly d?: AnyForce | undefined;
  /** Dc: the pull of a centre-axle trailer. */
  readonly dc?: AnyForce | undefined;
  /** V: the vertical bounce of a centre-axle trailer above 3.5 t. */
  readonly v?: AnyForce | undefined;
  /** S: the greatest static vertical mass on the coupling. */
  readonly s?: AnyWeight | undefined;
}

/** The combination that a coupling must hold, by its permissible masses. */
export interface CouplingQuestion {
  readonly plate: CouplingPlate;
  /** T: technically permissible mass of the tow vehicle. */
  readonly towVehicle?: AnyWeight | undefined;
  /** R: technically permissible mass of the trailer. */
  readonly trailer?: AnyWeight | undefined;
  /** C: what the axles of a centre-axle trailer press on the ground, coupled, at its permissible mass. */
  readonly onAxles?: AnyWeight | undefined;
  /** X: length of the loading area. */
  readonly deckLength?: AnyLength | undefined;
  /** L: from the coupling to the middle of the axles. */
  readonly drawbar?: AnyLength | undefined;
  /** Air springs, or any other. */
  readonly suspension?: 'air' | 'other' | undefined;
  /** The tongue load, for S. */
  readonly tongue?: AnyWeight | undefined;
}

/** What the plate holds and what could not be asked. */
export interface CouplingFindings extends Findings {
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}
