/** The types of a deck, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type { DensityInput, LengthInput, WeightPerAreaInput } from './figures.js';
import type { BoardInput, DecodedBoard } from './member.js';

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
