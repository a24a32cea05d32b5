/** What can go wrong with tires: plain data. */
import type { TraceError } from '../trace/index.js';
import type { UnreadableDesignation } from './designation-errors.js';

/** The family gives no pressure for the letter: only the size can. */
export interface SizeNeeded {
  readonly chapter: 'tires';
  readonly tag: 'SizeNeeded';
  readonly family: string;
  readonly letter: string;
  readonly path?: string;
}

/** A table load needs the load range, and the designation gives none. */
export interface LoadRangeNeeded {
  readonly chapter: 'tires';
  readonly tag: 'LoadRangeNeeded';
  readonly designation: string;
  readonly path?: string;
}

/** Dual tires were asked for and only a single load is known. Dual is never derived from single. */
export interface NoDualRating {
  readonly chapter: 'tires';
  readonly tag: 'NoDualRating';
  readonly designation: string;
  readonly path?: string;
}

/** A dual load above the single load of the same tire. */
export interface DualAboveSingle {
  readonly chapter: 'tires';
  readonly tag: 'DualAboveSingle';
  readonly single: string;
  readonly dual: string;
  readonly path?: string;
}

/** A figure that has to be greater than zero. */
export interface NotPositive {
  readonly chapter: 'tires';
  readonly tag: 'NotPositive';
  readonly what: string;
  readonly found: string;
  readonly path?: string;
}

/** A pressure above what the tire is rated at. */
export interface PressureAboveRated {
  readonly chapter: 'tires';
  readonly tag: 'PressureAboveRated';
  readonly asked: string;
  readonly rated: string;
  readonly path?: string;
}

/** A load that the tire may not carry at any pressure. */
export interface LoadAboveRating {
  readonly chapter: 'tires';
  readonly tag: 'LoadAboveRating';
  readonly load: string;
  readonly rating: string;
  readonly path?: string;
}

/** The size does not say its aspect, and no published diameter is at hand. */
export interface NoAspectRatio {
  readonly chapter: 'tires';
  readonly tag: 'NoAspectRatio';
  readonly size: string;
  readonly path?: string;
}

/** A question about tires without a tire. */
export interface NoTires {
  readonly chapter: 'tires';
  readonly tag: 'NoTires';
  readonly path?: string;
}

/** The placard belongs to trailers of 10,000 lb or less. */
export interface NoPlacardAbove {
  readonly chapter: 'tires';
  readonly tag: 'NoPlacardAbove';
  readonly gvwr: string;
  readonly most: string;
  readonly path?: string;
}

/** The unloaded trailer weighs more than its rating: there is no cargo capacity to print. */
export interface UnloadedAboveGvwr {
  readonly chapter: 'tires';
  readonly tag: 'UnloadedAboveGvwr';
  readonly gvwr: string;
  readonly unloaded: string;
  readonly path?: string;
}

/** The text is not a date code. */
export interface UnreadableDateCode {
  readonly chapter: 'tires';
  readonly tag: 'UnreadableDateCode';
  readonly text: string;
  readonly needed: string;
  readonly path?: string;
}

/** The errors that belong to this chapter. */
export type TiresOwnError =
  | UnreadableDesignation
  | SizeNeeded
  | LoadRangeNeeded
  | NoDualRating
  | DualAboveSingle
  | NotPositive
  | PressureAboveRated
  | LoadAboveRating
  | NoAspectRatio
  | NoTires
  | NoPlacardAbove
  | UnloadedAboveGvwr
  | UnreadableDateCode;

/** Every error a function of this chapter can return. */
export type TiresError = TiresOwnError | TraceError;
