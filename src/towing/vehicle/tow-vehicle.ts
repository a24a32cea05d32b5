/** The inputs of the chain of checks: tow vehicle and trailer. Every field except `hitch` is optional. */
import type { AnyLength, AnyShare, AnyWeight } from '../../trace/index.js';
import type { HitchKind } from '../errors.js';

/** A hitch part with a limit on the trailer's gross weight and another on the tongue load. */
export interface HitchPart {
  readonly gross?: AnyWeight | undefined;
  readonly tongue?: AnyWeight | undefined;
}

/** The tow vehicle: label, owner's manual, hitch parts, and what a scale said of it alone. */
export interface TowVehicle {
  readonly hitch: HitchKind;
  /** The axles of the truck alone, people and cargo aboard, as it will tow. */
  readonly front?: AnyWeight | undefined;
  readonly rear?: AnyWeight | undefined;
  readonly gvwr?: AnyWeight | undefined;
  readonly frontGawr?: AnyWeight | undefined;
  readonly rearGawr?: AnyWeight | undefined;
  readonly gcwr?: AnyWeight | undefined;
  readonly wheelbase?: AnyLength | undefined;
  /** Rear axle to ball; negative for a gooseneck. `'unknown'` asks for the stated bound; left out, the axles are not checked. */
  readonly overhang?: AnyLength | { readonly ofWheelbase: AnyShare } | 'unknown' | undefined;
  /** Hitch parts that were not on the truck when it was scaled; their weight is taken to act at the ball. */
  readonly hitchHardware?: AnyWeight | undefined;
  /** Ratings for the way it is used: weight carrying or weight distributing. */
  readonly receiver?: HitchPart | undefined;
  readonly ballMount?: HitchPart | undefined;
  readonly ball?: Pick<HitchPart, 'gross'> | undefined;
  /** The heaviest trailer, by the vehicle maker. */
  readonly trailerRating?: AnyWeight | undefined;
  /** The greatest tongue load, by the vehicle maker. */
  readonly tongueRating?: AnyWeight | undefined;
  /** The door placard: "occupants and cargo should never exceed", and who and what is aboard. */
  readonly placard?:
    | {
        readonly limit?: AnyWeight | undefined;
        readonly people?: AnyWeight | undefined;
        readonly cargo?: AnyWeight | undefined;
      }
    | undefined;
}

/** Safety chains: the breaking strength stamped or certified for each, not the working load limit. */
export interface TrailerChains {
  readonly each: AnyWeight;
  readonly count: 1 | 2;
}

/** The trailer's loads on the hitch. */
export interface TowedTrailer {
  /** The whole laden trailer, tongue load included. */
  readonly gross: AnyWeight;
  readonly tongue?: AnyWeight | undefined;
  readonly coupler?: HitchPart | undefined;
  readonly chains?: TrailerChains | undefined;
}
