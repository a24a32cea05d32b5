/** The types of an axle and its parts, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { LengthInput, PressureInput, WeightInput, WeightPerLengthInput } from './figures.js';

/** An axle. */
export interface AxleInput {
  /**
   * Coupler to the middle of this axle. Where: tape along the frame. Example: `"187 in"`. Without it: axle loads and
   * tongue, and whatever hangs on them.
   */
  readonly at?: LengthInput | undefined;
  /**
   * Gross axle weight rating. Where: certification label. Example: `"7,000 lb"`. Without it: parts against the GAWR,
   * and brakes; the weakest part stands in for it.
   */
  readonly gawr?: WeightInput | undefined;
  /**
   * Rating of the axle beam, the whole axle. Where: axle maker's plate on the tube. Example: `"7,000 lb"`. Without it:
   * beam against GAWR.
   */
  readonly beam?: WeightInput | undefined;
  /**
   * Rating of the springs of this axle, both sides together. Where: spring maker's sheet. Example: `"7,200 lb"`.
   * Without it: springs against GAWR.
   */
  readonly springs?: WeightInput | undefined;
  /**
   * Rating of hubs and bearings, both sides together. Where: hub maker's sheet; never from the bolt circle. Example:
   * `"7,000 lb"`. Without it: hubs against GAWR.
   */
  readonly hubs?: WeightInput | undefined;
  /** Wheels of this axle. Without it: wheels against GAWR. */
  readonly wheels?: WheelsInput | undefined;
  /** Tires of this axle. Without it: tires against GAWR, load of each tire, pressure needed. */
  readonly tires?: TiresInput | undefined;
  /**
   * Spring rate of the axle, both sides together. Where: spring or axle maker's sheet. Example: `"2200 lb/in"`. Without
   * it: with more than two independent axles the sharing cannot be answered.
   */
  readonly rate?: WeightPerLengthInput | undefined;
  /** The two brakes of this axle. Without it: the axle counts as unbraked; without any, the brakes are not checked. */
  readonly brakes?: BrakesInput | undefined;
}

/** An axle, as it was read. */
export interface DecodedAxle {
  /** Coupler to the middle of this axle. */
  readonly at?: Derived<'in'> | undefined;
  /** Gross axle weight rating. */
  readonly gawr?: Derived<'lb'> | undefined;
  /** Rating of the axle beam, the whole axle. */
  readonly beam?: Derived<'lb'> | undefined;
  /** Rating of the springs of this axle, both sides together. */
  readonly springs?: Derived<'lb'> | undefined;
  /** Rating of hubs and bearings, both sides together. */
  readonly hubs?: Derived<'lb'> | undefined;
  /** Wheels of this axle. */
  readonly wheels?: DecodedWheels | undefined;
  /** Tires of this axle. */
  readonly tires?: DecodedTires | undefined;
  /** Spring rate of the axle, both sides together. */
  readonly rate?: Derived<'lb/in'> | undefined;
  /** The two brakes of this axle. */
  readonly brakes?: DecodedBrakes | undefined;
}

/** Wheels of an axle: rating of each and how many. */
export interface WheelsInput {
  /** Load rating of one wheel. Where: stamped on the wheel. Example: `"3,750 lb"`. */
  readonly each: WeightInput;
  /** Wheels on this axle, both sides; one for each tire. Where: count them. Example: `2`. */
  readonly count: number;
}

/** Wheels of an axle: rating of each and how many, as it was read. */
export interface DecodedWheels {
  /** Load rating of one wheel. */
  readonly each: Derived<'lb'>;
  /** Wheels on this axle, both sides; one for each tire. */
  readonly count: number;
}

/** Tires of an axle. */
export interface TiresInput {
  /** Size, and what stands with it. Where: sidewall. Example: `"ST235/80R16 LRE"`. */
  readonly designation: string;
  /** Tires on this axle, both sides: 2 when single, 4 or 8 when dual. Where: count them. Example: `2`. */
  readonly count: number;
  /** `single`, or `dual` for two side by side. Where: look. Example: `"single"`. */
  readonly fitment: 'single' | 'dual';
  /**
   * Maximum load and pressure as molded; it outranks index and table. Without it: the load index, else a published
   * table, says what the tire carries.
   */
  readonly molded?: MoldedLoadInput | undefined;
  /**
   * The cold pressure it runs at. Where: a gauge, tires cold. Example: `"80 psi"`. Without it: tires at the pressure
   * they run: their full rating is taken, and it is said.
   */
  readonly pressure?: PressureInput | undefined;
}

/** Tires of an axle, as it was read. */
export interface DecodedTires {
  /** Size, and what stands with it. */
  readonly designation: string;
  /** Tires on this axle, both sides: 2 when single, 4 or 8 when dual. */
  readonly count: number;
  /** `single`, or `dual` for two side by side. */
  readonly fitment: 'single' | 'dual';
  /** Maximum load and pressure as molded; it outranks index and table. */
  readonly molded?: DecodedMoldedLoad | undefined;
  /** The cold pressure it runs at. */
  readonly pressure?: Derived<'psi'> | undefined;
}

/** Molded maximum load. */
export interface MoldedLoadInput {
  /**
   * Molded maximum load, single. Where: sidewall. Example: `"3,520 lb"`. Without it: load index or table is used for
   * single tires.
   */
  readonly single?: WeightInput | undefined;
  /**
   * Molded maximum load, dual. Where: sidewall. Example: `"3,080 lb"`. Without it: for dual tires: index or table, but
   * never one where a single load alone is molded.
   */
  readonly dual?: WeightInput | undefined;
  /**
   * The cold pressure molded beside the load. Where: sidewall. Example: `"80 psi"`. Without it: the tables say what the
   * tire carries as it runs.
   */
  readonly pressure?: PressureInput | undefined;
}

/** Molded maximum load, as it was read. */
export interface DecodedMoldedLoad {
  /** Molded maximum load, single. */
  readonly single?: Derived<'lb'> | undefined;
  /** Molded maximum load, dual. */
  readonly dual?: Derived<'lb'> | undefined;
  /** The cold pressure molded beside the load. */
  readonly pressure?: Derived<'psi'> | undefined;
}

/** The two brakes of an axle. */
export interface BrakesInput {
  /** Rating of the left brake. Where: brake maker's sheet; the drum size does not give it. Example: `"3,500 lb"`. */
  readonly left: WeightInput;
  /** Rating of the right brake. Where: brake maker's sheet. Example: `"3,500 lb"`. */
  readonly right: WeightInput;
}

/** The two brakes of an axle, as it was read. */
export interface DecodedBrakes {
  /** Rating of the left brake. */
  readonly left: Derived<'lb'>;
  /** Rating of the right brake. */
  readonly right: Derived<'lb'>;
}
