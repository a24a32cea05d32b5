/** The types of the trailer, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type { AxleInput, DecodedAxle } from './axles.js';
import type { CurbInput, DecodedCurb } from './curb.js';
import type { AngleInput, ForceInput, LengthInput, ShareInput, WeightInput } from './figures.js';

/** A trailer. */
export interface TrailerInput {
  /**
   * `ball` for a coupler behind the truck, `gooseneck` for one over its rear axle; a fifth wheel is not in here. Where:
   * look. Example: `"ball"`.
   */
  readonly hitch: 'ball' | 'gooseneck';
  /** The axles, from the front. A list. */
  readonly axles: readonly AxleInput[];
  /**
   * A name for the report. Where: you choose it. Example: `"Marlow Yard TD-14"`. Without it: the report is headed by
   * the spec's name.
   */
  readonly name?: string | undefined;
  /**
   * Gross vehicle weight rating of the whole laden trailer. Where: certification label, forward left side. Example:
   * `"14,000 lb"`. Without it: gross against GVWR; payload is then only what the other limits allow.
   */
  readonly gvwr?: WeightInput | undefined;
  /**
   * `equalised` for rockers or walking beams, `independent` for torsion axles. Where: look at the suspension. Example:
   * `"equalised"`. Without it: with two or more axles: axle loads, tongue, and whatever hangs on them.
   */
  readonly sharing?: 'equalised' | 'independent' | undefined;
  /** All axles together. Without it: the axles stand where each of them says. */
  readonly axleGroup?: AxleGroupPlaceInput | undefined;
  /** The empty trailer. Without it: gross weight, payload, axle loads, the tow side. */
  readonly curb?: CurbInput | undefined;
  /** Ratings of the coupler. Without it: coupler against gross and tongue. */
  readonly coupler?: CouplerInput | undefined;
  /** The safety chains. Without it: chains against gross. */
  readonly chains?: ChainsInput | undefined;
  /** The tongue jack. Without it: jack against tongue. */
  readonly jack?: JackInput | undefined;
  /** The anchor points for tiedowns. Without it: a tiedown is as strong as its own parts. */
  readonly anchors?: AnchorsInput | undefined;
  /** The ends of the deck. Without it: where the machine may stand. */
  readonly deck?: DeckPlanInput | undefined;
  /** The ramps. Without it: ramps against the machine, and their angle. */
  readonly ramps?: RampsInput | undefined;
  /**
   * Overall width, rigid fenders in it. Where: tape. Example: `"102 in"`. Without it: lines on lamps, tape and width
   * cannot be told.
   */
  readonly width?: LengthInput | undefined;
  /** Overall length. Where: tape. Example: `"26 ft"`. Without it: the line on side markers cannot be told. */
  readonly length?: LengthInput | undefined;
  /**
   * Whose practice the usual tongue band is: `US and Canada`, `Europe` or `Australia`. Where: where it is towed.
   * Example: `"Europe"`. Without it: the band of the US and Canada is taken; a trailer told in kilograms is asked.
   */
  readonly practice?: 'US and Canada' | 'Europe' | 'Australia' | undefined;
  /** The tongue band its maker asks for. Without it: the usual band of its kind of hitch is taken, with its source. */
  readonly guideline?: TongueBandInput | undefined;
  /**
   * Rating of the legs set under the tail before anything climbs on, together. Where: stamping, maker's sheet. Example:
   * `"4,000 lb"`. Without it: loading that pulls the ball up asks attention.
   */
  readonly rearLegs?: WeightInput | undefined;
  /**
   * Across the trailer, middle to middle of the tires (of the pair, when dual). Where: tape. Example: `"90 in"`.
   * Without it: how the load stands side to side.
   */
  readonly track?: LengthInput | undefined;
  /**
   * How far the ball stands above the height at which the trailer rides level; negative when below. Where: tape at
   * both, loaded. Example: `"1.5 in"`. Without it: independent axles, and the tongue load that they change, are not
   * asked off level.
   */
  readonly ballAboveLevel?: LengthInput | undefined;
}

/** A trailer, as it was read. */
export interface DecodedTrailer {
  /** `ball` for a coupler behind the truck, `gooseneck` for one over its rear axle; a fifth wheel is not in here. */
  readonly hitch: 'ball' | 'gooseneck';
  /** The axles, from the front. */
  readonly axles: readonly DecodedAxle[];
  /** A name for the report. */
  readonly name?: string | undefined;
  /** Gross vehicle weight rating of the whole laden trailer. */
  readonly gvwr?: Derived<'lb'> | undefined;
  /** `equalised` for rockers or walking beams, `independent` for torsion axles. */
  readonly sharing?: 'equalised' | 'independent' | undefined;
  /** All axles together. */
  readonly axleGroup?: DecodedAxleGroupPlace | undefined;
  /** The empty trailer. */
  readonly curb?: DecodedCurb | undefined;
  /** Ratings of the coupler. */
  readonly coupler?: DecodedCoupler | undefined;
  /** The safety chains. */
  readonly chains?: DecodedChains | undefined;
  /** The tongue jack. */
  readonly jack?: DecodedJack | undefined;
  /** The anchor points for tiedowns. */
  readonly anchors?: DecodedAnchors | undefined;
  /** The ends of the deck. */
  readonly deck?: DecodedDeckPlan | undefined;
  /** The ramps. */
  readonly ramps?: DecodedRamps | undefined;
  /** Overall width, rigid fenders in it. */
  readonly width?: Derived<'in'> | undefined;
  /** Overall length. */
  readonly length?: Derived<'in'> | undefined;
  /** Whose practice the usual tongue band is: `US and Canada`, `Europe` or `Australia`. */
  readonly practice?: 'US and Canada' | 'Europe' | 'Australia' | undefined;
  /** The tongue band its maker asks for. */
  readonly guideline?: DecodedTongueBand | undefined;
  /** Rating of the legs set under the tail before anything climbs on, together. */
  readonly rearLegs?: Derived<'lb'> | undefined;
  /** Across the trailer, middle to middle of the tires (of the pair, when dual). */
  readonly track?: Derived<'in'> | undefined;
  /** How far the ball stands above the height at which the trailer rides level; negative when below. */
  readonly ballAboveLevel?: Derived<'in'> | undefined;
}

/** All axles together. */
export interface AxleGroupPlaceInput {
  /**
   * Coupler to the middle of the axles; it moves all of them together, their spacings as listed. Where: drawing.
   * Example: `"204 in"`. Without it: the axles stand where each of them says.
   */
  readonly at?: LengthInput | undefined;
}

/** All axles together, as it was read. */
export interface DecodedAxleGroupPlace {
  /** Coupler to the middle of the axles; it moves all of them together, their spacings as listed. */
  readonly at?: Derived<'in'> | undefined;
}

/** Coupler ratings. */
export interface CouplerInput {
  /**
   * The heaviest trailer it may couple. Where: stamped on the coupler. Example: `"15,000 lb"`. Without it: gross
   * against coupler.
   */
  readonly gross?: WeightInput | undefined;
  /**
   * The greatest vertical load; S on a European plate. Where: stamped on the coupler, or its maker's sheet. Example:
   * `"2,000 lb"`. Without it: tongue against coupler.
   */
  readonly tongue?: WeightInput | undefined;
  /**
   * D of a European coupling: the pull between vehicle and trailer. Where: plate of the coupling. Example: `"17.2 kN"`.
   * Without it: D is not asked.
   */
  readonly d?: ForceInput | undefined;
  /**
   * Dc of a European coupling: the pull of a centre-axle trailer. Where: plate of the coupling. Example: `"17.5 kN"`.
   * Without it: Dc is not asked.
   */
  readonly dc?: ForceInput | undefined;
  /**
   * V of a European coupling: the bounce of a centre-axle trailer above 3.5 t. Where: plate of the coupling. Example:
   * `"24 kN"`. Without it: V is not asked.
   */
  readonly v?: ForceInput | undefined;
}

/** Coupler ratings, as it was read. */
export interface DecodedCoupler {
  /** The heaviest trailer it may couple. */
  readonly gross?: Derived<'lb'> | undefined;
  /** The greatest vertical load; S on a European plate. */
  readonly tongue?: Derived<'lb'> | undefined;
  /** D of a European coupling: the pull between vehicle and trailer. */
  readonly d?: Derived<UnitOf<'force'>> | undefined;
  /** Dc of a European coupling: the pull of a centre-axle trailer. */
  readonly dc?: Derived<UnitOf<'force'>> | undefined;
  /** V of a European coupling: the bounce of a centre-axle trailer above 3.5 t. */
  readonly v?: Derived<UnitOf<'force'>> | undefined;
}

/** Safety chains. */
export interface ChainsInput {
  /**
   * Breaking strength of one chain with its hook and anchor, not a working load limit. Where: tag or certificate.
   * Example: `"16,200 lb"`.
   */
  readonly each: WeightInput;
  /** One or two. Where: count them. Example: `2`. */
  readonly count: number;
}

/** Safety chains, as it was read. */
export interface DecodedChains {
  /** Breaking strength of one chain with its hook and anchor, not a working load limit. */
  readonly each: Derived<'lb'>;
  /** One or two. */
  readonly count: number;
}

/** Jack. */
export interface JackInput {
  /** What it lifts. Where: stamped on the jack. Example: `"5,000 lb"`. */
  readonly rating: WeightInput;
  /** Behind the ball. Where: tape. Example: `"20 in"`. */
  readonly at: LengthInput;
  /**
   * What its load is multiplied by before it is compared; 100 % for none. Nobody prints one: choose. Where: your
   * practice. Example: `"125 %"`.
   */
  readonly margin: ShareInput;
}

/** Jack, as it was read. */
export interface DecodedJack {
  /** What it lifts. */
  readonly rating: Derived<'lb'>;
  /** Behind the ball. */
  readonly at: Derived<'in'>;
  /** What its load is multiplied by before it is compared; 100 % for none. Nobody prints one: choose. */
  readonly margin: Derived<'ratio'>;
}

/** Anchor points for tiedowns. */
export interface AnchorsInput {
  /**
   * Working load limit marked on one anchor point; the weakest, where they differ. Where: marking, or the maker's
   * sheet. Example: `"5,000 lb"`.
   */
  readonly each: WeightInput;
  /** How many there are. Where: count them. Example: `8`. */
  readonly count: number;
}

/** Anchor points for tiedowns, as it was read. */
export interface DecodedAnchors {
  /** Working load limit marked on one anchor point; the weakest, where they differ. */
  readonly each: Derived<'lb'>;
  /** How many there are. */
  readonly count: number;
}

/** Deck. */
export interface DeckPlanInput {
  /** Front end of what a machine may stand on. Where: tape. Example: `"62 in"`. */
  readonly front: LengthInput;
  /** Rear end. Where: tape. Example: `"302 in"`. */
  readonly rear: LengthInput;
  /**
   * Width of what a machine may stand on, away from the fenders. Where: tape. Example: `"82 in"`. Without it: whether a
   * piece of cargo is wider than the deck.
   */
  readonly width?: LengthInput | undefined;
  /**
   * Clear width between the fenders. Where: tape. Example: `"80 in"`. Without it: whether a piece of cargo passes
   * between the fenders.
   */
  readonly betweenFenders?: LengthInput | undefined;
  /**
   * Whether cargo may stand over the fenders: a deck above the wheels, or fenders made to be driven over. Where: look.
   * Example: `false`. Without it: taken as not.
   */
  readonly overFenders?: boolean | undefined;
}

/** Deck, as it was read. */
export interface DecodedDeckPlan {
  /** Front end of what a machine may stand on. */
  readonly front: Derived<'in'>;
  /** Rear end. */
  readonly rear: Derived<'in'>;
  /** Width of what a machine may stand on, away from the fenders. */
  readonly width?: Derived<'in'> | undefined;
  /** Clear width between the fenders. */
  readonly betweenFenders?: Derived<'in'> | undefined;
  /** Whether cargo may stand over the fenders: a deck above the wheels, or fenders made to be driven over. */
  readonly overFenders?: boolean | undefined;
}

/** Ramps. */
export interface RampsInput {
  /** Along the surface, ground to deck edge. Where: tape. Example: `"66 in"`. */
  readonly length: LengthInput;
  /** Ground to the edge the ramps hang on, as the trailer stands when loading. Where: tape. Example: `"16 in"`. */
  readonly height: LengthInput;
  /** Rating of the pair. Where: plate on the ramp. Example: `"14,000 lb"`. Without it: ramps against the machine. */
  readonly rating?: WeightInput | undefined;
  /**
   * What the rating speaks of: `axle` for the heaviest machine axle, `machine` for the whole of it. Where: printed with
   * the rating. Example: `"machine"`. Without it: ramps against the machine: a rating without its basis is none.
   */
  readonly basis?: 'axle' | 'machine' | undefined;
  /** Where the ramps can be set. Without it: where to set them is not answered. */
  readonly setting?: RampSettingInput | undefined;
  /** A tail that slopes before the ramps begin. Without it: the deck counts as straight. */
  readonly dovetail?: DovetailInput | undefined;
}

/** Ramps, as it was read. */
export interface DecodedRamps {
  /** Along the surface, ground to deck edge. */
  readonly length: Derived<'in'>;
  /** Ground to the edge the ramps hang on, as the trailer stands when loading. */
  readonly height: Derived<'in'>;
  /** Rating of the pair. */
  readonly rating?: Derived<'lb'> | undefined;
  /** What the rating speaks of: `axle` for the heaviest machine axle, `machine` for the whole of it. */
  readonly basis?: 'axle' | 'machine' | undefined;
  /** Where the ramps can be set. */
  readonly setting?: DecodedRampSetting | undefined;
  /** A tail that slopes before the ramps begin. */
  readonly dovetail?: DecodedDovetail | undefined;
}

/** Where the ramps can be set. */
export interface RampSettingInput {
  /** Width of one ramp. Where: tape. Example: `"18 in"`. */
  readonly width: LengthInput;
  /** How much ramp is to show on each side of the tire. Where: your practice; zero for none. Example: `"1 in"`. */
  readonly margin: LengthInput;
  /** Closest setting, middle to middle. Where: tape, in the slots. Example: `"40 in"`. */
  readonly closest: LengthInput;
  /** Widest setting, middle to middle. Where: tape, in the slots. Example: `"70 in"`. */
  readonly widest: LengthInput;
}

/** Where the ramps can be set, as it was read. */
export interface DecodedRampSetting {
  /** Width of one ramp. */
  readonly width: Derived<'in'>;
  /** How much ramp is to show on each side of the tire. */
  readonly margin: Derived<'in'>;
  /** Closest setting, middle to middle. */
  readonly closest: Derived<'in'>;
  /** Widest setting, middle to middle. */
  readonly widest: Derived<'in'>;
}

/** Dovetail. */
export interface DovetailInput {
  /** How far it falls from the deck. Where: angle finder. Example: `"8 deg"`. */
  readonly angle: AngleInput;
  /** Along its surface. Where: tape. Example: `"60 in"`. */
  readonly length: LengthInput;
}

/** Dovetail, as it was read. */
export interface DecodedDovetail {
  /** How far it falls from the deck. */
  readonly angle: Derived<'deg'>;
  /** Along its surface. */
  readonly length: Derived<'in'>;
}

/** A band of tongue shares. */
export interface TongueBandInput {
  /** Least tongue share. Where: trailer maker's manual. Example: `"10 %"`. */
  readonly low: ShareInput;
  /** Greatest tongue share. Where: trailer maker's manual. Example: `"15 %"`. */
  readonly high: ShareInput;
  /** Who says so. Where: title of the manual. Example: `"owner's manual, 2026"`. */
  readonly source: string;
}

/** A band of tongue shares, as it was read. */
export interface DecodedTongueBand {
  /** Least tongue share. */
  readonly low: Derived<'ratio'>;
  /** Greatest tongue share. */
  readonly high: Derived<'ratio'>;
  /** Who says so. */
  readonly source: string;
}
