/** The columns of the tables of shapes. Figures are text; each column names its unit. */

/** What every shape table prints: weight lb/ft; area in2; Ix, Iy in4; Sx, Sy in3; most also print rx, ry in. */
interface ShapeRow {
  readonly designation: string;
  readonly weight: string;
  readonly area: string;
  readonly Ix: string;
  readonly Sx: string;
  readonly rx?: string;
  readonly Iy: string;
  readonly Sy: string;
  readonly ry?: string;
}

/** `k` is the distance from the outer face of the flange to the end of the fillet; absent where a copy does not print it. Inches. */
interface FlangedRow extends ShapeRow {
  readonly depth: string;
  readonly flangeWidth: string;
  readonly web: string;
  readonly flange: string;
  readonly k?: string;
}

/** `fromBack` is the centre of gravity measured from the back of the web; absent where a copy does not print it. */
export interface ChannelRow extends FlangedRow {
  readonly shape: 'C' | 'MC';
  readonly fromBack?: string;
}

export interface BeamRow extends FlangedRow {
  readonly shape: 'W' | 'S' | 'M';
}

/** The x axis is parallel to the short leg. `fromLongLeg` is printed as x-bar, `fromShortLeg` as y-bar. */
export interface AngleRow extends ShapeRow {
  readonly shape: 'L';
  readonly longLeg: string;
  readonly shortLeg: string;
  readonly thickness: string;
  readonly k: string;
  readonly fromLongLeg: string;
  readonly fromShortLeg: string;
}

export interface RectangularTubeRow extends ShapeRow {
  readonly shape: 'HSS';
  readonly height: string;
  readonly width: string;
  readonly wall: string;
  readonly designWall: string;
}

export interface RoundTubeRow extends ShapeRow {
  readonly shape: 'HSS' | 'PIPE';
  readonly outside: string;
  readonly wall: string;
  readonly designWall: string;
}

export type AnyShapeRow = ChannelRow | BeamRow | AngleRow | RectangularTubeRow | RoundTubeRow;

/** Inches. */
export interface LeastWebRow {
  readonly depth: string;
  readonly web: string;
}
