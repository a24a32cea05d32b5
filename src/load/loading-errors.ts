/** What can go wrong when a machine is placed, driven up the ramps and tied down: plain data. */
import type { Quantity, Unit } from '../units/index.js';

/** A weight or a length that makes no sense at zero or below. */
export interface MustBeAboveZero {
  readonly chapter: 'load';
  readonly tag: 'MustBeAboveZero';
  readonly what: string;
  readonly found: Quantity<Unit>;
  readonly path?: string;
}

/** A figure that may be zero and not less. */
export interface MustNotBeNegative {
  readonly chapter: 'load';
  readonly tag: 'MustNotBeNegative';
  readonly what: string;
  readonly found: Quantity<Unit>;
  readonly path?: string;
}

/** Two ends given the wrong way round: the deck, a band, the ramp slots. */
export interface EndsReversed {
  readonly chapter: 'load';
  readonly tag: 'EndsReversed';
  readonly what: string;
  readonly low: Quantity<Unit>;
  readonly high: Quantity<Unit>;
  readonly path?: string;
}

/** A figure that must lie between two others: a balance point within its machine, an angle below a right angle. */
export interface OutsideItsRange {
  readonly chapter: 'load';
  readonly tag: 'OutsideItsRange';
  readonly what: string;
  readonly found: Quantity<Unit>;
  readonly from: Quantity<Unit>;
  readonly to: Quantity<Unit>;
  readonly path?: string;
}

/** The ramp does not reach from the ground to the deck at any angle. */
export interface RampTooShort {
  readonly chapter: 'load';
  readonly tag: 'RampTooShort';
  readonly height: Quantity<Unit>;
  readonly length: Quantity<Unit>;
  readonly path?: string;
}

/** Independent axles share by their springs, and the springs are not known. */
export interface SpringRatesMissing {
  readonly chapter: 'load';
  readonly tag: 'SpringRatesMissing';
  readonly axles: number;
  readonly path?: string;
}

/** A list that may not be empty: axles, items, parts of a tiedown. */
export interface NothingGiven {
  readonly chapter: 'load';
  readonly tag: 'NothingGiven';
  readonly what: string;
  readonly path?: string;
}

/** A count that is not a whole number from one to the most that a trailer may have. */
export interface NotACount {
  readonly chapter: 'load';
  readonly tag: 'NotACount';
  readonly what: string;
  readonly found: string;
  readonly most: number;
  readonly path?: string;
}

/** No limit among those given says how heavy the machine may be. */
export interface NothingLimits {
  readonly chapter: 'load';
  readonly tag: 'NothingLimits';
  readonly what: string;
  readonly given: readonly string[];
  readonly path?: string;
}

/** The ramps are rated by axle load and nobody said what the machine's axles carry. */
export interface MachineAxleLoadsMissing {
  readonly chapter: 'load';
  readonly tag: 'MachineAxleLoadsMissing';
  readonly machineWeight: Quantity<Unit>;
  readonly path?: string;
}

/** A section of the securement rules that is not written for an article of this weight. */
export interface SectionNotForThisWeight {
  readonly chapter: 'load';
  readonly tag: 'SectionNotForThisWeight';
  readonly section: string;
  readonly weight: Quantity<Unit>;
  readonly most: Quantity<Unit>;
  readonly path?: string;
}

export type LoadingError =
  | MustBeAboveZero
  | MustNotBeNegative
  | EndsReversed
  | OutsideItsRange
  | RampTooShort
  | SpringRatesMissing
  | NothingGiven
  | NotACount
  | NothingLimits
  | MachineAxleLoadsMissing
  | SectionNotForThisWeight;
