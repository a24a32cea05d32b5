/** The types of the tow vehicle, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { LengthInput, ShareInput, WeightInput } from './figures.js';

/** A tow vehicle. */
export interface TowInput {
  /**
   * Front axle of the truck alone, people and cargo aboard. Where: scale. Example: `{"text":"5,150
   * lb","basis":"scale"}`. Without it: truck GVWR, both GAWRs, GCWR, spring bars.
   */
  readonly front?: WeightInput | undefined;
  /**
   * Rear axle, likewise. Where: scale. Example: `{"text":"3,650 lb","basis":"scale"}`. Without it: truck GVWR, both
   * GAWRs, GCWR, spring bars.
   */
  readonly rear?: WeightInput | undefined;
  /**
   * Gross vehicle weight rating of the truck. Where: certification label, door jamb. Example: `"14,000 lb"`. Without
   * it: truck GVWR; lines that need it cannot be told.
   */
  readonly gvwr?: WeightInput | undefined;
  /** Front axle rating. Where: certification label. Example: `"6,000 lb"`. Without it: front axle against its GAWR. */
  readonly frontGawr?: WeightInput | undefined;
  /** Rear axle rating. Where: certification label. Example: `"9,650 lb"`. Without it: rear axle against its GAWR. */
  readonly rearGawr?: WeightInput | undefined;
  /**
   * Combination rating by the vehicle maker. Where: owner's manual or towing guide. Example: `"30,000 lb"`. Without it:
   * combination against GCWR.
   */
  readonly gcwr?: WeightInput | undefined;
  /**
   * Front axle to rear axle. Where: tape or manual. Example: `"176 in"`. Without it: both GAWRs, unless the overhang is
   * `unknown`; spring bars.
   */
  readonly wheelbase?: LengthInput | undefined;
  /**
   * Rear axle to ball; negative for a gooseneck ahead of it; `"unknown"` takes the makers' bound of half a wheelbase
   * and says so. Where: tape. Example: `"54 in"`. Without it: both GAWRs, spring bars.
   */
  readonly overhang?: 'unknown' | LengthInput | undefined;
  /**
   * Hitch parts that were not on the truck when it was scaled. Where: scale or sheet. Example: `"60 lb"`. Without it:
   * taken as on the truck, and that is said.
   */
  readonly hitchHardware?: WeightInput | undefined;
  /** Ratings of the receiver, for the way it is used. Without it: receiver against gross and tongue. */
  readonly receiver?: ReceiverInput | undefined;
  /** Ratings of the ball mount. Without it: ball mount against gross and tongue. */
  readonly ballMount?: BallMountInput | undefined;
  /** Rating of the ball. Without it: ball against gross. */
  readonly ball?: BallInput | undefined;
  /**
   * The heaviest trailer, by the vehicle maker. Where: owner's manual, for this build. Example: `"18,000 lb"`. Without
   * it: trailer tow rating.
   */
  readonly trailerRating?: WeightInput | undefined;
  /**
   * The greatest tongue load, by the vehicle maker. Where: owner's manual. Example: `"1,800 lb"`. Without it: tongue
   * against the vehicle's rating.
   */
  readonly tongueRating?: WeightInput | undefined;
  /** Occupant and cargo placard. Without it: placard against people, cargo and tongue. */
  readonly placard?: PlacardInput | undefined;
  /** Weight distributing spring bars. Without it: no bars: the axles as they are. */
  readonly bars?: BarsInput | undefined;
}

/** A tow vehicle, as it was read. */
export interface DecodedTow {
  /** Front axle of the truck alone, people and cargo aboard. */
  readonly front?: Derived<'lb'> | undefined;
  /** Rear axle, likewise. */
  readonly rear?: Derived<'lb'> | undefined;
  /** Gross vehicle weight rating of the truck. */
  readonly gvwr?: Derived<'lb'> | undefined;
  /** Front axle rating. */
  readonly frontGawr?: Derived<'lb'> | undefined;
  /** Rear axle rating. */
  readonly rearGawr?: Derived<'lb'> | undefined;
  /** Combination rating by the vehicle maker. */
  readonly gcwr?: Derived<'lb'> | undefined;
  /** Front axle to rear axle. */
  readonly wheelbase?: Derived<'in'> | undefined;
  /**
   * Rear axle to ball; negative for a gooseneck ahead of it; `"unknown"` takes the makers' bound of half a wheelbase
   * and says so.
   */
  readonly overhang?: 'unknown' | Derived<'in'> | undefined;
  /** Hitch parts that were not on the truck when it was scaled. */
  readonly hitchHardware?: Derived<'lb'> | undefined;
  /** Ratings of the receiver, for the way it is used. */
  readonly receiver?: DecodedReceiver | undefined;
  /** Ratings of the ball mount. */
  readonly ballMount?: DecodedBallMount | undefined;
  /** Rating of the ball. */
  readonly ball?: DecodedBall | undefined;
  /** The heaviest trailer, by the vehicle maker. */
  readonly trailerRating?: Derived<'lb'> | undefined;
  /** The greatest tongue load, by the vehicle maker. */
  readonly tongueRating?: Derived<'lb'> | undefined;
  /** Occupant and cargo placard. */
  readonly placard?: DecodedPlacard | undefined;
  /** Weight distributing spring bars. */
  readonly bars?: DecodedBars | undefined;
}

/** Receiver ratings. */
export interface ReceiverInput {
  /** Gross trailer rating. Where: label on the receiver. Example: `"20,000 lb"`. Without it: gross against receiver. */
  readonly gross?: WeightInput | undefined;
  /** Tongue rating. Where: label on the receiver. Example: `"2,000 lb"`. Without it: tongue against receiver. */
  readonly tongue?: WeightInput | undefined;
}

/** Receiver ratings, as it was read. */
export interface DecodedReceiver {
  /** Gross trailer rating. */
  readonly gross?: Derived<'lb'> | undefined;
  /** Tongue rating. */
  readonly tongue?: Derived<'lb'> | undefined;
}

/** Ball mount ratings. */
export interface BallMountInput {
  /**
   * Gross trailer rating. Where: stamped on the mount. Example: `"16,000 lb"`. Without it: gross against ball mount.
   */
  readonly gross?: WeightInput | undefined;
  /** Tongue rating. Where: stamped on the mount. Example: `"1,600 lb"`. Without it: tongue against ball mount. */
  readonly tongue?: WeightInput | undefined;
}

/** Ball mount ratings, as it was read. */
export interface DecodedBallMount {
  /** Gross trailer rating. */
  readonly gross?: Derived<'lb'> | undefined;
  /** Tongue rating. */
  readonly tongue?: Derived<'lb'> | undefined;
}

/** Ball rating. */
export interface BallInput {
  /**
   * Gross trailer rating. Where: stamped on top of the ball. Example: `"16,000 lb"`. Without it: gross against ball.
   */
  readonly gross?: WeightInput | undefined;
}

/** Ball rating, as it was read. */
export interface DecodedBall {
  /** Gross trailer rating. */
  readonly gross?: Derived<'lb'> | undefined;
}

/** Occupant and cargo placard. */
export interface PlacardInput {
  /**
   * What occupants and cargo should never exceed. Where: placard in the door opening. Example: `"4,200 lb"`. Without
   * it: the placard.
   */
  readonly limit?: WeightInput | undefined;
  /** People aboard. Where: ask them, or a scale. Example: `"400 lb"`. Without it: the placard. */
  readonly people?: WeightInput | undefined;
  /** Cargo in the truck, the tongue left out. Where: scale. Example: `"250 lb"`. Without it: the placard. */
  readonly cargo?: WeightInput | undefined;
}

/** Occupant and cargo placard, as it was read. */
export interface DecodedPlacard {
  /** What occupants and cargo should never exceed. */
  readonly limit?: Derived<'lb'> | undefined;
  /** People aboard. */
  readonly people?: Derived<'lb'> | undefined;
  /** Cargo in the truck, the tongue left out. */
  readonly cargo?: Derived<'lb'> | undefined;
}

/** Weight distributing bars. */
export interface BarsInput {
  /**
   * Share of what the front axle lost that the bars give back. Where: how they are set; three scale passes tell it.
   * Example: `"50 %"`.
   */
  readonly restore: ShareInput;
}

/** Weight distributing bars, as it was read. */
export interface DecodedBars {
  /** Share of what the front axle lost that the bars give back. */
  readonly restore: Derived<'ratio'>;
}
