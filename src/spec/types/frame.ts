/** The types of a cut list, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type { LengthInput, PiecesInput, WeightInput } from './figures.js';
import type { DecodedMember } from './made.js';
import type { MemberInput } from './member.js';

/** A line of a cut list. */
export type CutLineInput = LengthwiseLineInput | PlacedLineInput | SpacedLineInput | WeighedLineInput;

/** A line of a cut list, as it was read. */
export type DecodedCutLine = DecodedLengthwiseLine | DecodedPlacedLine | DecodedSpacedLine | DecodedWeighedLine;

/** Lengthwise pieces. Pieces that run lengthwise; the key `from` without `spacing` says so. */
export interface LengthwiseLineInput {
  /** What it is. Where: you choose it. Example: `"rails"`. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: MemberInput;
  /** Cut length of one piece. Where: drawing. Example: `"20 ft"`. */
  readonly length: LengthInput;
  /** How many pieces. Where: drawing. Example: `2`. */
  readonly count: PiecesInput;
  /** Where their front end stands. Where: drawing. Example: `"48 in"`. */
  readonly from: LengthInput;
}

/** Lengthwise pieces, as it was read. */
export interface DecodedLengthwiseLine {
  /** What it is. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: DecodedMember;
  /** Cut length of one piece. */
  readonly length: Derived<UnitOf<'length'>>;
  /** How many pieces. */
  readonly count: Derived<'ratio'>;
  /** Where their front end stands. */
  readonly from: Derived<UnitOf<'length'>>;
}

/** Pieces at one place. Pieces at one place; the key `at` says so. */
export interface PlacedLineInput {
  /** What it is. Where: you choose it. Example: `"header"`. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: MemberInput;
  /** Cut length of one piece. Where: drawing. Example: `"83 in"`. */
  readonly length: LengthInput;
  /** How many pieces. Where: drawing. Example: `1`. */
  readonly count: PiecesInput;
  /** Where they stand. Where: drawing. Example: `"49 in"`. */
  readonly at: LengthInput;
}

/** Pieces at one place, as it was read. */
export interface DecodedPlacedLine {
  /** What it is. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: DecodedMember;
  /** Cut length of one piece. */
  readonly length: Derived<UnitOf<'length'>>;
  /** How many pieces. */
  readonly count: Derived<'ratio'>;
  /** Where they stand. */
  readonly at: Derived<UnitOf<'length'>>;
}

/** Pieces at a spacing. Pieces at a spacing; the key `spacing` says so. */
export interface SpacedLineInput {
  /** What it is. Where: you choose it. Example: `"crossmembers"`. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: MemberInput;
  /** Cut length of one piece. Where: drawing. Example: `"83 in"`. */
  readonly length: LengthInput;
  /** From one to the next. Where: drawing. Example: `"16 in"`. */
  readonly spacing: LengthInput;
  /** The length they are spread over. Where: drawing. Example: `"20 ft"`. */
  readonly over: LengthInput;
  /** Where the first of them may stand. Where: drawing. Example: `"62 in"`. */
  readonly from: LengthInput;
  /** How a spacing becomes a number of pieces. Where: drawing. Example: `"first at the start"`. */
  readonly rule: 'first at the start' | 'first at the start, last at the end' | 'none at either end';
}

/** Pieces at a spacing, as it was read. */
export interface DecodedSpacedLine {
  /** What it is. */
  readonly name: string;
  /** What it is cut from. */
  readonly member: DecodedMember;
  /** Cut length of one piece. */
  readonly length: Derived<UnitOf<'length'>>;
  /** From one to the next. */
  readonly spacing: Derived<UnitOf<'length'>>;
  /** The length they are spread over. */
  readonly over: Derived<UnitOf<'length'>>;
  /** Where the first of them may stand. */
  readonly from: Derived<UnitOf<'length'>>;
  /** How a spacing becomes a number of pieces. */
  readonly rule: 'first at the start' | 'first at the start, last at the end' | 'none at either end';
}

/** A line of known weight. What was weighed; the key `weight` says so. */
export interface WeighedLineInput {
  /** What it is. Where: you choose it. Example: `"coupler"`. */
  readonly name: string;
  /** What it weighs. Where: scale or sheet. Example: `"35 lb"`. */
  readonly weight: WeightInput;
  /** Where its middle stands. Where: drawing. Example: `"4 in"`. */
  readonly at: LengthInput;
}

/** A line of known weight, as it was read. */
export interface DecodedWeighedLine {
  /** What it is. */
  readonly name: string;
  /** What it weighs. */
  readonly weight: Derived<UnitOf<'mass'>>;
  /** Where its middle stands. */
  readonly at: Derived<UnitOf<'length'>>;
}
