/** Outlines of sections: the dimensions from which properties are computed. Lengths in any unit; all outside dimensions. */
import type { AnyLength, Known } from '../../trace/index.js';

interface Flanged {
  readonly name?: string;
  readonly depth: AnyLength;
  readonly flangeWidth: AnyLength;
  /** Web thickness. */
  readonly web: AnyLength;
  /** Flange thickness; of a tapered flange the mean, halfway out on the overhang. */
  readonly flange: AnyLength;
  /** Radius of the fillet between web and flange; zero when there is none. */
  readonly rootRadius: AnyLength;
}

interface Tapered extends Flanged {
  /** Slope of the inner flange face: 1/6 for C and S shapes (`standardTaper`). */
  readonly slope: Known<'ratio'>;
  /** Radius at the inner edge of the flange tip; zero when it is sharp. */
  readonly toeRadius: AnyLength;
}

/** A rolled channel with tapered flanges: C shapes. */
export interface TaperedChannel extends Tapered {
  readonly kind: 'tapered channel';
}
/** A rolled beam with tapered flanges: S shapes. */
export interface TaperedBeam extends Tapered {
  readonly kind: 'tapered beam';
}
/** A beam with flanges of even thickness: W shapes. */
export interface ParallelBeam extends Flanged {
  readonly kind: 'parallel beam';
}
/** A channel with flanges of even thickness. */
export interface ParallelChannel extends Flanged {
  readonly kind: 'parallel channel';
}

/** A channel bent from plate. */
export interface FormedChannel {
  readonly kind: 'formed channel';
  readonly name?: string;
  readonly depth: AnyLength;
  readonly flangeWidth: AnyLength;
  readonly thickness: AnyLength;
  /** Inside radius of the bends. */
  readonly insideRadius: AnyLength;
}

/**
 * Which wall area and properties are computed with. Weight is always that of the nominal wall.
 * 'nominal wall': tube made to its full wall. '0.93 of nominal wall': the rule for common welded tube. Or the design wall of a table.
 */
export type WallForProperties = 'nominal wall' | '0.93 of nominal wall' | { readonly designWall: AnyLength };

export interface RectangularTube {
  readonly kind: 'rectangular tube';
  readonly name?: string;
  readonly height: AnyLength;
  readonly width: AnyLength;
  /** Nominal wall. */
  readonly wall: AnyLength;
  readonly properties: WallForProperties;
  /** Outside corner radius; the inside radius is one wall less. Published tables take twice the wall. */
  readonly outsideRadius: 'twice the wall' | AnyLength;
}

export interface RoundTube {
  readonly kind: 'round tube';
  readonly name?: string;
  readonly outside: AnyLength;
  /** Nominal wall. */
  readonly wall: AnyLength;
  readonly properties: WallForProperties;
}

/** One leg up, one leg across; sharp corners. */
export interface Angle {
  readonly kind: 'angle';
  readonly name?: string;
  readonly uprightLeg: AnyLength;
  readonly flatLeg: AnyLength;
  readonly thickness: AnyLength;
}

/** A solid rectangle: flat bar, plate strip, board. */
export interface Flat {
  readonly kind: 'flat';
  readonly name?: string;
  readonly height: AnyLength;
  readonly width: AnyLength;
}

export type Outline =
  | TaperedChannel
  | TaperedBeam
  | ParallelBeam
  | ParallelChannel
  | FormedChannel
  | RectangularTube
  | RoundTube
  | Angle
  | Flat;
