/** The parts of an axle, and the axle as they rate it. */
import type { Check, Governed, Rating } from '../ratings/index.js';
import type { Decision, Derived, Known } from '../trace/index.js';

/** Several alike: the rating of each and how many. */
export interface Set {
  readonly each: Known<'lb'>;
  readonly count: number;
}

/** What is known of one axle. Beam, springs and hubs as rated for the whole axle; wheels and tires each. */
export interface AxleParts {
  readonly gawr?: Known<'lb'> | undefined;
  readonly beam?: Known<'lb'> | undefined;
  readonly springs?: Known<'lb'> | undefined;
  readonly hubs?: Known<'lb'> | undefined;
  readonly wheels?: Set | undefined;
  readonly tires?: Set | undefined;
}

/** A part of an axle that has a rating of its own. */
export type AxlePartName = Exclude<keyof AxleParts, 'gawr'>;

export interface AxleSystem {
  readonly label: string;
  /** The least of the GAWR (when given) and every part that is given. */
  readonly rating: Derived<'lb'>;
  readonly governed: Governed;
  readonly gawr?: Rating<'GAWR'> | undefined;
  /** Each part against the GAWR; empty without a GAWR. */
  readonly checks: readonly Check[];
  /** Parts nobody gave a rating for. */
  readonly notGiven: readonly AxlePartName[];
  readonly decisions: readonly Decision[];
}
