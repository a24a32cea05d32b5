/** What can go wrong with weights and their places, ramps and tiedowns: plain data. */
import type { Unit, WireQuantity } from '../units/index.js';

/** The axles are at the coupler or ahead of it, so the trailer cannot balance. */
export interface AxlesNotBehindCoupler {
  readonly chapter: 'load';
  readonly tag: 'AxlesNotBehindCoupler';
  readonly axlesAt: WireQuantity<'in'>;
  readonly path?: string;
}

/** The list of weights is empty, or they add up to zero or less. */
export interface NothingWeighed {
  readonly chapter: 'load';
  readonly tag: 'NothingWeighed';
  readonly gross: WireQuantity<'lb'>;
  readonly path?: string;
}

/** The tongue load of a trailer standing alone is more than the trailer. */
export interface TongueAboveWeight {
  readonly chapter: 'load';
  readonly tag: 'TongueAboveWeight';
  readonly of: string;
  readonly tongue: WireQuantity<'lb'>;
  readonly weight: WireQuantity<'lb'>;
  readonly path?: string;
}

/** A payload is the least of its limits, and no limit was given. */
export interface NoLimits {
  readonly chapter: 'load';
  readonly tag: 'NoLimits';
  readonly path?: string;
}

/** The ramp is shorter than the deck is high: it does not reach at any angle. */
export interface RampTooShort {
  readonly chapter: 'load';
  readonly tag: 'RampTooShort';
  readonly height: WireQuantity<Unit>;
  readonly length: WireQuantity<Unit>;
  readonly path?: string;
}

/** A list that may not be empty: items, edges, parts of a tiedown. */
export interface NothingGiven {
  readonly chapter: 'load';
  readonly tag: 'NothingGiven';
  readonly what: string;
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

/** The ramps are rated by axle load and the machine's axle loads are not known. */
export interface MachineAxleLoadsMissing {
  readonly chapter: 'load';
  readonly tag: 'MachineAxleLoadsMissing';
  readonly machineWeight: WireQuantity<Unit>;
  readonly path?: string;
}

/** A section of the securement rules that is not written for an article of this weight. */
export interface SectionNotForThisWeight {
  readonly chapter: 'load';
  readonly tag: 'SectionNotForThisWeight';
  readonly section: string;
  readonly weight: WireQuantity<Unit>;
  readonly most: WireQuantity<Unit>;
  readonly path?: string;
}

/** What the moment balance can be refused for. */
export type BalanceError = AxlesNotBehindCoupler | NothingWeighed | TongueAboveWeight;

export type LoadError =
  | BalanceError
  | NoLimits
  | RampTooShort
  | NothingGiven
  | NothingLimits
  | MachineAxleLoadsMissing
  | SectionNotForThisWeight;
