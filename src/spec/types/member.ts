/** The types of what a cut list is cut from, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type { DensityInput, LengthInput, ShareInput, WeightPerLengthInput } from './figures.js';

/** A member. */
export type MemberInput =
  | string
  | FlatBarMemberInput
  | RoundBarMemberInput
  | FormedChannelMemberInput
  | BoardMemberInput
  | StatedMemberInput;

/** A member, as it was read. */
export type MemberForm =
  | string
  | DecodedFlatBarMember
  | DecodedRoundBarMember
  | DecodedFormedChannelMember
  | DecodedBoardMember
  | DecodedStatedMember;

/** A flat bar. */
export interface FlatBarMemberInput {
  /** A flat bar. */
  readonly flatBar: FlatBarInput;
}

/** A flat bar, as it was read. */
export interface DecodedFlatBarMember {
  /** A flat bar. */
  readonly flatBar: DecodedFlatBar;
}

/** A flat bar. */
export interface FlatBarInput {
  /** Its thickness. Where: drawing. Example: `"3/8 in"`. */
  readonly thickness: LengthInput;
  /** Its width. Where: drawing. Example: `"3 in"`. */
  readonly width: LengthInput;
  /**
   * What it is made of: `steel`, `steel at 40.8 lb/ft2 per inch`, `aluminium`, or a density. Where: drawing. Example:
   * `"steel"`.
   */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | DensityInput;
}

/** A flat bar, as it was read. */
export interface DecodedFlatBar {
  /** Its thickness. */
  readonly thickness: Derived<UnitOf<'length'>>;
  /** Its width. */
  readonly width: Derived<UnitOf<'length'>>;
  /** What it is made of: `steel`, `steel at 40.8 lb/ft2 per inch`, `aluminium`, or a density. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | Derived<UnitOf<'density'>>;
}

/** A round bar. */
export interface RoundBarMemberInput {
  /** A round bar. */
  readonly roundBar: RoundBarInput;
}

/** A round bar, as it was read. */
export interface DecodedRoundBarMember {
  /** A round bar. */
  readonly roundBar: DecodedRoundBar;
}

/** A round bar. */
export interface RoundBarInput {
  /** Its diameter. Where: drawing. Example: `"1 in"`. */
  readonly diameter: LengthInput;
  /** What it is made of: a name, or a density. Where: drawing. Example: `"steel"`. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | DensityInput;
}

/** A round bar, as it was read. */
export interface DecodedRoundBar {
  /** Its diameter. */
  readonly diameter: Derived<UnitOf<'length'>>;
  /** What it is made of: a name, or a density. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | Derived<UnitOf<'density'>>;
}

/** A channel bent from plate. */
export interface FormedChannelMemberInput {
  /** A channel bent from plate. */
  readonly formedChannel: FormedChannelInput;
}

/** A channel bent from plate, as it was read. */
export interface DecodedFormedChannelMember {
  /** A channel bent from plate. */
  readonly formedChannel: DecodedFormedChannel;
}

/** A channel bent from plate. */
export interface FormedChannelInput {
  /** Outside depth. Where: drawing. Example: `"6 in"`. */
  readonly depth: LengthInput;
  /** Outside width of a flange. Where: drawing. Example: `"2 in"`. */
  readonly flangeWidth: LengthInput;
  /** Thickness of the plate. Where: drawing. Example: `"3/16 in"`. */
  readonly thickness: LengthInput;
  /** Inside radius of the bends. Where: drawing. Example: `"3/16 in"`. */
  readonly insideRadius: LengthInput;
  /** What it is made of: a name, or a density. Where: drawing. Example: `"steel"`. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | DensityInput;
}

/** A channel bent from plate, as it was read. */
export interface DecodedFormedChannel {
  /** Outside depth. */
  readonly depth: Derived<UnitOf<'length'>>;
  /** Outside width of a flange. */
  readonly flangeWidth: Derived<UnitOf<'length'>>;
  /** Thickness of the plate. */
  readonly thickness: Derived<UnitOf<'length'>>;
  /** Inside radius of the bends. */
  readonly insideRadius: Derived<UnitOf<'length'>>;
  /** What it is made of: a name, or a density. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | Derived<UnitOf<'density'>>;
}

/** A board. */
export interface BoardMemberInput {
  /** A board. */
  readonly board: BoardInput;
}

/** A board, as it was read. */
export interface DecodedBoardMember {
  /** A board. */
  readonly board: DecodedBoard;
}

/** A board. */
export interface BoardInput {
  /** Nominal size. Where: yard ticket. Example: `"2x8"`. */
  readonly size: string;
  /** What wood it is. */
  readonly wood: WoodInput;
}

/** A board, as it was read. */
export interface DecodedBoard {
  /** Nominal size. */
  readonly size: string;
  /** What wood it is. */
  readonly wood: DecodedWood;
}

/** A wood. */
export type WoodInput =
  | WoodByNdsGravityInput
  | WoodByHandbookGravityInput
  | WoodByAirDryRangeInput
  | TreatedWoodInput
  | WoodByDensityInput;

/** A wood, as it was read. */
export type DecodedWood =
  | DecodedWoodByNdsGravity
  | DecodedWoodByHandbookGravity
  | DecodedWoodByAirDryRange
  | DecodedTreatedWood
  | DecodedWoodByDensity;

/** A wood by NDS gravity. */
export interface WoodByNdsGravityInput {
  /** Specific gravity of the NDS, by oven-dry volume. Where: choose. Example: `"NDS gravity"`. */
  readonly by: 'NDS gravity';
  /** Species or combination, as the table prints it. Where: grade stamp. Example: `"Southern Pine"`. */
  readonly species: string;
  /** Moisture content. Where: grade stamp, or a meter. Example: `"19 %"`. */
  readonly moisture: ShareInput;
}

/** A wood by NDS gravity, as it was read. */
export interface DecodedWoodByNdsGravity {
  /** Specific gravity of the NDS, by oven-dry volume. */
  readonly by: 'NDS gravity';
  /** Species or combination, as the table prints it. */
  readonly species: string;
  /** Moisture content. */
  readonly moisture: Derived<UnitOf<'ratio'>>;
}

/** A wood by handbook gravity. */
export interface WoodByHandbookGravityInput {
  /** Specific gravity of the handbook, by the volume at 12 %. Where: choose. Example: `"handbook gravity at 12 %"`. */
  readonly by: 'handbook gravity at 12 %';
  /** Species, as the table prints it. Where: yard ticket. Example: `"Oak, white"`. */
  readonly species: string;
}

/** A wood by handbook gravity, as it was read. */
export interface DecodedWoodByHandbookGravity {
  /** Specific gravity of the handbook, by the volume at 12 %. */
  readonly by: 'handbook gravity at 12 %';
  /** Species, as the table prints it. */
  readonly species: string;
}

/** A wood by its air-dry range. */
export interface WoodByAirDryRangeInput {
  /** The printed range of air-dry weights. Where: choose. Example: `"air-dry range"`. */
  readonly by: 'air-dry range';
  /** Species, as the table prints it. Where: yard ticket. Example: `"Keruing / apitong"`. */
  readonly species: string;
  /** Which end of the range. Where: your judgement. Example: `"high"`. */
  readonly end: 'low' | 'high';
}

/** A wood by its air-dry range, as it was read. */
export interface DecodedWoodByAirDryRange {
  /** The printed range of air-dry weights. */
  readonly by: 'air-dry range';
  /** Species, as the table prints it. */
  readonly species: string;
  /** Which end of the range. */
  readonly end: 'low' | 'high';
}

/** A treated wood. */
export interface TreatedWoodInput {
  /** The printed range for treated wood. Where: choose. Example: `"treated"`. */
  readonly by: 'treated';
  /** Freshly treated, or dried since. Where: look. Example: `"treated, dried"`. */
  readonly state: 'freshly treated' | 'treated, dried';
  /** Which end of the range. Where: your judgement. Example: `"high"`. */
  readonly end: 'low' | 'high';
}

/** A treated wood, as it was read. */
export interface DecodedTreatedWood {
  /** The printed range for treated wood. */
  readonly by: 'treated';
  /** Freshly treated, or dried since. */
  readonly state: 'freshly treated' | 'treated, dried';
  /** Which end of the range. */
  readonly end: 'low' | 'high';
}

/** A wood by density. */
export interface WoodByDensityInput {
  /** A density of your own. Where: choose. Example: `"density"`. */
  readonly by: 'density';
  /** Its weight per volume. Where: a board on the scale. Example: `"38 lb/ft3"`. */
  readonly density: DensityInput;
}

/** A wood by density, as it was read. */
export interface DecodedWoodByDensity {
  /** A density of your own. */
  readonly by: 'density';
  /** Its weight per volume. */
  readonly density: Derived<UnitOf<'density'>>;
}

/** A member of known weight. */
export interface StatedMemberInput {
  /** A member of known weight. */
  readonly own: OwnMemberInput;
}

/** A member of known weight, as it was read. */
export interface DecodedStatedMember {
  /** A member of known weight. */
  readonly own: DecodedOwnMember;
}

/** A member of known weight. */
export interface OwnMemberInput {
  /** What it is. Where: you choose it. Example: `"side rail"`. */
  readonly name: string;
  /** Its weight per length. Where: maker's sheet, or a piece on the scale. Example: `"2.35 lb/ft"`. */
  readonly weightPerFoot: WeightPerLengthInput;
}

/** A member of known weight, as it was read. */
export interface DecodedOwnMember {
  /** What it is. */
  readonly name: string;
  /** Its weight per length. */
  readonly weightPerFoot: Derived<UnitOf<'weight per length'>>;
}
