/** The types of the empty trailer, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { DeckAreaInput } from './deck.js';
import type { LengthInput, ShareInput, WeightInput } from './figures.js';
import type { CutLineInput, DecodedCutLine } from './frame.js';
import type { DecodedDeckArea } from './made.js';

/**
 * The empty trailer: weighed, or built up from items, frame and deck. Weighed, or built up from parts. When both are
 * there the scale governs, and the difference is told.
 */
export interface CurbInput {
  /**
   * The whole empty trailer, tongue in it, options fitted. Where: scale, all wheels and the tongue. Example:
   * `{"text":"3,650 lb","basis":"scale"}`. Without it: the built-up weight is used; with neither, gross and payload.
   */
  readonly weight?: WeightInput | undefined;
  /**
   * What the empty trailer puts on the hitch. Where: tongue scale, trailer level. Example: `{"text":"520
   * lb","basis":"scale"}`. Without it: with a weighed trailer: axle loads and tongue.
   */
  readonly tongue?: WeightInput | undefined;
  /**
   * The same by a bathroom scale and a beam, coupler on the beam; `tongue` outranks it. Without it: `tongue` must be
   * given.
   */
  readonly tongueByLever?: TongueByLeverInput | undefined;
  /**
   * What was fitted after the trailer was weighed: options by weight and place. A list. Without it: the weighed trailer
   * is taken as it stands.
   */
  readonly added?: readonly AddedPartInput[] | undefined;
  /** Its parts, when it is built up. A list. Without it: it must be weighed. */
  readonly items?: readonly ItemInput[] | undefined;
  /** Its steel, as a cut list. A list. Without it: it is not in the built-up weight. */
  readonly frame?: readonly CutLineInput[] | undefined;
  /** Its deck, area by area. A list. Without it: it is not in the built-up weight. */
  readonly deck?: readonly DeckAreaInput[] | undefined;
  /**
   * Names of the lines of `frame` and `deck` that get longer, or more, with the deck. Where: drawing. Example: `["main
   * rails","deck boards"]`. Without it: what more deck costs is not answered.
   */
  readonly grows?: readonly string[] | undefined;
  /**
   * How far the built-up weight may be from the scale, as a share of it. Where: your practice. Example: `"3 %"`.
   * Without it: the difference is told and not judged.
   */
  readonly tolerance?: ShareInput | undefined;
}

/** The empty trailer: weighed, or built up from items, frame and deck, as it was read. */
export interface DecodedCurb {
  /** The whole empty trailer, tongue in it, options fitted. */
  readonly weight?: Derived<'lb'> | undefined;
  /** What the empty trailer puts on the hitch. */
  readonly tongue?: Derived<'lb'> | undefined;
  /** The same by a bathroom scale and a beam, coupler on the beam; `tongue` outranks it. */
  readonly tongueByLever?: DecodedTongueByLever | undefined;
  /** What was fitted after the trailer was weighed: options by weight and place. */
  readonly added?: readonly DecodedAddedPart[] | undefined;
  /** Its parts, when it is built up. */
  readonly items?: readonly DecodedItem[] | undefined;
  /** Its steel, as a cut list. */
  readonly frame?: readonly DecodedCutLine[] | undefined;
  /** Its deck, area by area. */
  readonly deck?: readonly DecodedDeckArea[] | undefined;
  /** Names of the lines of `frame` and `deck` that get longer, or more, with the deck. */
  readonly grows?: readonly string[] | undefined;
  /** How far the built-up weight may be from the scale, as a share of it. */
  readonly tolerance?: Derived<'ratio'> | undefined;
}

/** Tongue by beam and scale. */
export interface TongueByLeverInput {
  /** What the scale shows, beam and tongue on it. Where: scale. Example: `"220 lb"`. */
  readonly reading: WeightInput;
  /** What it shows under the beam alone. Where: scale. Example: `"20 lb"`. */
  readonly beamTare: WeightInput;
  /** Along the beam, fixed support to the coupler. Where: tape. Example: `"1 ft"`. */
  readonly pipeToTongue: LengthInput;
  /** Along the beam, coupler to the scale. Where: tape. Example: `"2 ft"`. */
  readonly tongueToScale: LengthInput;
}

/** Tongue by beam and scale, as it was read. */
export interface DecodedTongueByLever {
  /** What the scale shows, beam and tongue on it. */
  readonly reading: Derived<'lb'>;
  /** What it shows under the beam alone. */
  readonly beamTare: Derived<'lb'>;
  /** Along the beam, fixed support to the coupler. */
  readonly pipeToTongue: Derived<'in'>;
  /** Along the beam, coupler to the scale. */
  readonly tongueToScale: Derived<'in'>;
}

/** A part added after the trailer was weighed. */
export interface AddedPartInput {
  /** What was added. Where: you choose it. Example: `"winch on a post"`. */
  readonly name: string;
  /** What it weighs. Where: scale or sheet. Example: `"120 lb"`. */
  readonly weight: WeightInput;
  /** Where its middle stands. Where: tape. Example: `"58 in"`. */
  readonly at: LengthInput;
}

/** A part added after the trailer was weighed, as it was read. */
export interface DecodedAddedPart {
  /** What was added. */
  readonly name: string;
  /** What it weighs. */
  readonly weight: Derived<'lb'>;
  /** Where its middle stands. */
  readonly at: Derived<'in'>;
}

/** A part of the trailer. */
export interface ItemInput {
  /** What it is. Where: you choose it. Example: `"left rail"`. */
  readonly name: string;
  /** The weight of one. Where: scale or sheet. Example: `"164 lb"`. */
  readonly weight: WeightInput;
  /** Where its middle stands. Where: drawing or tape. Example: `"168 in"`. */
  readonly at: LengthInput;
  /** How many, all at that place on average. Where: count them. Example: `2`. Without it: one. */
  readonly count?: number | undefined;
}

/** A part of the trailer, as it was read. */
export interface DecodedItem {
  /** What it is. */
  readonly name: string;
  /** The weight of one. */
  readonly weight: Derived<'lb'>;
  /** Where its middle stands. */
  readonly at: Derived<'in'>;
  /** How many, all at that place on average. */
  readonly count?: number | undefined;
}
