/** The types of cut list and deck, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type {
  DensityInput,
  LengthInput,
  PiecesInput,
  ShareInput,
  WeightInput,
  WeightPerAreaInput,
  WeightPerLengthInput,
} from './figures.js';
import type { DecodedMember } from './made.js';

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

/** An area of deck. */
export interface DeckAreaInput {
  /** What it is. Where: you choose it. Example: `"planking"`. */
  readonly name: string;
  /** Along the trailer. Where: drawing. Example: `"18 ft"`. */
  readonly length: LengthInput;
  /** Across it. Where: drawing. Example: `"83 in"`. */
  readonly width: LengthInput;
  /** Where its front edge stands. Where: drawing. Example: `"62 in"`. */
  readonly from: LengthInput;
  /** What it is laid with. */
  readonly surface: SurfaceInput;
}

/** An area of deck, as it was read. */
export interface DeckAreaForm {
  /** What it is. */
  readonly name: string;
  /** Along the trailer. */
  readonly length: Derived<UnitOf<'length'>>;
  /** Across it. */
  readonly width: Derived<UnitOf<'length'>>;
  /** Where its front edge stands. */
  readonly from: Derived<UnitOf<'length'>>;
  /** What it is laid with. */
  readonly surface: DecodedSurface;
}

/** A deck surface. */
export type SurfaceInput =
  | BoardSurfaceInput
  | PlateSurfaceInput
  | SheetSurfaceInput
  | FloorPlateSurfaceInput
  | ExpandedMetalSurfaceInput
  | StatedSurfaceInput;

/** A deck surface, as it was read. */
export type DecodedSurface =
  | DecodedBoardSurface
  | DecodedPlateSurface
  | DecodedSheetSurface
  | DecodedFloorPlateSurface
  | DecodedExpandedMetalSurface
  | DecodedStatedSurface;

/** Boards laid edge to edge. */
export interface BoardSurfaceInput {
  /** Boards laid edge to edge. */
  readonly boards: BoardInput;
}

/** Boards laid edge to edge, as it was read. */
export interface DecodedBoardSurface {
  /** Boards laid edge to edge. */
  readonly boards: DecodedBoard;
}

/** Plain plate. */
export interface PlateSurfaceInput {
  /** Plain plate. */
  readonly plate: PlateInput;
}

/** Plain plate, as it was read. */
export interface DecodedPlateSurface {
  /** Plain plate. */
  readonly plate: DecodedPlate;
}

/** Plain plate. */
export interface PlateInput {
  /** Its thickness. Where: drawing. Example: `"3/16 in"`. */
  readonly thickness: LengthInput;
  /** What it is made of: a name, or a density. Where: drawing. Example: `"aluminium"`. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | DensityInput;
}

/** Plain plate, as it was read. */
export interface DecodedPlate {
  /** Its thickness. */
  readonly thickness: Derived<UnitOf<'length'>>;
  /** What it is made of: a name, or a density. */
  readonly material: 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium' | Derived<UnitOf<'density'>>;
}

/** Sheet by its gauge. */
export interface SheetSurfaceInput {
  /** Sheet by its gauge. */
  readonly sheet: SheetInput;
}

/** Sheet by its gauge, as it was read. */
export interface DecodedSheetSurface {
  /** Sheet by its gauge. */
  readonly sheet: DecodedSheet;
}

/** Sheet by its gauge. */
export interface SheetInput {
  /** Its gauge number. Where: drawing. Example: `11`. */
  readonly gauge: number;
  /** The gauge system. Where: drawing. Example: `"manufacturers' standard"`. */
  readonly system:
    | "manufacturers' standard"
    | "manufacturers' standard, 490 lb/ft3"
    | 'galvanized'
    | 'legal gauge, 15 U.S.C. 206';
}

/** Sheet by its gauge, as it was read. */
export interface DecodedSheet {
  /** Its gauge number. */
  readonly gauge: number;
  /** The gauge system. */
  readonly system:
    | "manufacturers' standard"
    | "manufacturers' standard, 490 lb/ft3"
    | 'galvanized'
    | 'legal gauge, 15 U.S.C. 206';
}

/** Raised-pattern floor plate. */
export interface FloorPlateSurfaceInput {
  /** Raised-pattern floor plate by its nominal thickness in inches, as text. Where: drawing. Example: `"1/8"`. */
  readonly floorPlate: string;
}

/** Raised-pattern floor plate, as it was read. */
export interface DecodedFloorPlateSurface {
  /** Raised-pattern floor plate by its nominal thickness in inches, as text. */
  readonly floorPlate: string;
}

/** Expanded metal. */
export interface ExpandedMetalSurfaceInput {
  /** Expanded metal by its style. Where: drawing. Example: `"3/4 #9"`. */
  readonly expandedMetal: string;
}

/** Expanded metal, as it was read. */
export interface DecodedExpandedMetalSurface {
  /** Expanded metal by its style. */
  readonly expandedMetal: string;
}

/** Anything whose weight per square foot is known. */
export interface StatedSurfaceInput {
  /** Its weight per area. Where: maker's sheet. Example: `"4.75 lb/ft2"`. */
  readonly weightPerSquareFoot: WeightPerAreaInput;
}

/** Anything whose weight per square foot is known, as it was read. */
export interface DecodedStatedSurface {
  /** Its weight per area. */
  readonly weightPerSquareFoot: Derived<UnitOf<'weight per area'>>;
}
