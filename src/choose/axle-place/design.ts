/** What is to be designed, and the interval that answers it. */
import type { AnyLength, AnyWeight, Derived } from '../../trace/index.js';

/** A machine and the place of its balance point. */
export interface DesignMachine {
  /** Its name. */
  readonly name: string;
  /** Its weight. */
  readonly weight: AnyWeight;
  /** From the front of the deck to its balance point. */
  readonly behindDeckFront: AnyLength;
}

/** What is to be designed. */
export interface AxleDesign {
  /** The trailer as a spec: built up from items, frame and deck, or weighed. */
  readonly spec: unknown;
  /** Names of the lines that move with the axles: axles, springs, wheels, fenders. */
  readonly moving: readonly string[];
  /** Deck lengths to compare, `"18 ft"`; by default the one of the spec. Others need `curb.grows`. */
  readonly decks?: readonly string[];
  /** The machines that must ride. */
  readonly machines?: readonly DesignMachine[];
}

/** One end of the interval, set by one way of loading. */
export interface AxleLimit {
  /** How it is loaded: `empty`, `loaded to its GVWR over the whole deck`, or the name of a machine. */
  readonly name: string;
  /** The axles must not be nearer to the coupler, by the low end of the band. */
  readonly from: Derived<'in'>;
  /** The axles must not be farther from the coupler, by the high end of the band. */
  readonly to: Derived<'in'>;
}

/** The answer for one deck length. */
export interface AxleInterval {
  /** Length of the deck. */
  readonly deck: Derived<'in'>;
  /** Weight of the empty trailer. */
  readonly empty: Derived<'lb'>;
  /** The least distance of the middle of the axles behind the coupler. */
  readonly from: Derived<'in'>;
  /** The greatest distance. */
  readonly to: Derived<'in'>;
  /** What sets the near end. */
  readonly fromSetBy: readonly string[];
  /** What sets the far end. */
  readonly toSetBy: readonly string[];
  /** True when no place serves all: the two ends are in conflict. */
  readonly none: boolean;
  /** Each way of loading by itself. */
  readonly limits: readonly AxleLimit[];
  /** Built up: exact. Weighed: what moves with the axles is taken to stay where it is, an approximation. */
  readonly how: 'built up' | 'weighed';
}
