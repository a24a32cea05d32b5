/** The columns of the tables of plate, sheet, mesh, wood and strength. Figures are text; each column names its unit. */
import type { Source } from '../../trace/index.js';

/** Thickness in, weights lb/ft2. */
export interface PlateRow {
  readonly nominal: string;
  readonly thickness: string;
  readonly weight: string;
  readonly weightAt40_8: string;
}

/** Thicknesses in, weights lb/ft2; a gauge that a system does not print has no column there. */
export interface GaugeRow {
  readonly gauge: string;
  readonly standard?: string;
  readonly standardWeight?: string;
  readonly weightAt490?: string;
  readonly galvanized?: string;
  readonly galvanizedWeight?: string;
  readonly legal?: string;
  readonly legalWeight?: string;
}

/** Thickness in without the pattern; weight lb/ft2 with it; `pattern` is the part of that weight above plain plate. */
export interface FloorPlateRow {
  readonly nominal: string;
  readonly thickness: string;
  readonly weight: string;
  readonly pattern: string;
}

/** Weight lb/ft2. */
export interface ExpandedMetalRow {
  readonly style: string;
  readonly weight: string;
  readonly pairing: 'printed' | 'by the reader';
}

/** Inches, in2, lb/ft. */
export interface LumberRow {
  readonly nominal: string;
  readonly thickness: string;
  readonly width: string;
  readonly area: string;
  readonly weightAt35?: string;
}

/** Gravity by oven-dry weight and oven-dry volume; densities lb/ft3 computed from it. */
export interface NdsGravityRow {
  readonly species: string;
  readonly gravity: string;
  readonly densityAt12: string;
  readonly densityAt15: string;
  readonly densityAt19: string;
}

/** Gravity by oven-dry weight: `basic` over green volume, `at12` over the volume at 12 %. Air-dry density lb/ft3. */
export interface WoodDensityRow {
  readonly species: string;
  readonly basic: string;
  readonly at12?: string;
  readonly airDryLow?: string;
  readonly airDryHigh?: string;
  readonly source: Source;
  readonly note?: string;
}

/** lb/ft3. */
export interface TreatedWoodRow {
  readonly state: 'freshly treated' | 'treated, dried';
  readonly low: string;
  readonly high: string;
}

/** ksi, as printed: some are ranges. */
export interface StrengthRow {
  readonly steel: string;
  readonly yield: string;
  readonly tensile: string;
  readonly note?: string;
  readonly tier: 'read' | 'from-memory';
}

/** ksi, for A36 and for a grade of 50 ksi. */
export interface AllowableRow {
  readonly rule: string;
  readonly expression: string;
  readonly a36: string;
  readonly grade50: string;
  readonly from: string;
  readonly note?: string;
}
