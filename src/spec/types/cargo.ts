/** The types of what lies on the trailer, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { LengthInput, WeightInput } from './figures.js';

/** A piece of cargo. */
export interface CargoInput {
  /** What it is. Where: you choose it. Example: `"excavator"`. */
  readonly name: string;
  /** With attachment, fuel and whatever is on it. Where: scale; else plate or sheet. Example: `"9,000 lb"`. */
  readonly weight: WeightInput;
  /**
   * Where its balance point stands; not together with `front`. Where: tape. Example: `"182 in"`. Without it: `front`
   * and `balancePoint` must say it; with neither, axle loads and tongue.
   */
  readonly at?: LengthInput | undefined;
  /** Where its front face stands. Where: tape. Example: `"122 in"`. Without it: `at` must be given. */
  readonly front?: LengthInput | undefined;
  /**
   * Balance point behind its front face. Where: two axle weighings, or the maker's sheet. Example: `"60 in"`. Without
   * it: `at` must be given; where it may stand is not answered.
   */
  readonly balancePoint?: LengthInput | undefined;
  /** Its length over all. Where: tape. Example: `"168 in"`. Without it: where it may stand, and its tiedowns. */
  readonly length?: LengthInput | undefined;
  /**
   * Its width over all, as it stands on the deck. Where: tape. Example: `"78 in"`. Without it: whether it fits between
   * the fenders and on the deck.
   */
  readonly width?: LengthInput | undefined;
  /**
   * How far its balance point stands right of the middle of the trailer; negative to the left. Where: tape. Example:
   * `"1 in"`. Without it: how the load stands side to side.
   */
  readonly rightOfMiddle?: LengthInput | undefined;
  /**
   * How far the balance point may truly lie from that, either way. Where: your judgement; zero when weighed. Example:
   * `"2 in"`. Without it: it is taken as exact, and that is said.
   */
  readonly uncertainty?: LengthInput | undefined;
  /**
   * Of a machine on wheels, axle to axle. Where: tape, or its sheet. Example: `"50 in"`. Without it: whether it hangs
   * up at the edge of the deck.
   */
  readonly wheelbase?: LengthInput | undefined;
  /** Its lowest point between the axles. Without it: whether it hangs up at the edge of the deck. */
  readonly lowPoint?: LowPointInput | undefined;
  /** Its axles as they stand on the ramps, from its front. A list. Without it: where to set the ramps. */
  readonly gauges?: readonly MachineAxleInput[] | undefined;
  /**
   * Axle loads of the machine itself, from its front. Where: scale, one axle at a time. Example: `["3,700 lb","2,500
   * lb"]`. Without it: ramps rated by axle are not checked.
   */
  readonly axles?: readonly WeightInput[] | undefined;
  /** What ties it down. A list. Without it: its tiedowns. */
  readonly tiedowns?: readonly TiedownInput[] | undefined;
  /**
   * The section it is tied by: `general`, `heavy equipment` or `light vehicle`; below 10,000 lb a choice. Where: 49 CFR
   * 393. Example: `"heavy equipment"`. Without it: its tiedowns.
   */
  readonly section?: 'general' | 'heavy equipment' | 'light vehicle' | undefined;
  /**
   * Held against moving forward by a headboard or other means. Where: look. Example: `false`. Without it: taken as not
   * blocked.
   */
  readonly blockedForward?: boolean | undefined;
}

/** A piece of cargo, as it was read. */
export interface DecodedCargo {
  /** What it is. */
  readonly name: string;
  /** With attachment, fuel and whatever is on it. */
  readonly weight: Derived<'lb'>;
  /** Where its balance point stands; not together with `front`. */
  readonly at?: Derived<'in'> | undefined;
  /** Where its front face stands. */
  readonly front?: Derived<'in'> | undefined;
  /** Balance point behind its front face. */
  readonly balancePoint?: Derived<'in'> | undefined;
  /** Its length over all. */
  readonly length?: Derived<'in'> | undefined;
  /** Its width over all, as it stands on the deck. */
  readonly width?: Derived<'in'> | undefined;
  /** How far its balance point stands right of the middle of the trailer; negative to the left. */
  readonly rightOfMiddle?: Derived<'in'> | undefined;
  /** How far the balance point may truly lie from that, either way. */
  readonly uncertainty?: Derived<'in'> | undefined;
  /** Of a machine on wheels, axle to axle. */
  readonly wheelbase?: Derived<'in'> | undefined;
  /** Its lowest point between the axles. */
  readonly lowPoint?: DecodedLowPoint | undefined;
  /** Its axles as they stand on the ramps, from its front. */
  readonly gauges?: readonly DecodedMachineAxle[] | undefined;
  /** Axle loads of the machine itself, from its front. */
  readonly axles?: readonly Derived<'lb'>[] | undefined;
  /** What ties it down. */
  readonly tiedowns?: readonly DecodedTiedown[] | undefined;
  /** The section it is tied by: `general`, `heavy equipment` or `light vehicle`; below 10,000 lb a choice. */
  readonly section?: 'general' | 'heavy equipment' | 'light vehicle' | undefined;
  /** Held against moving forward by a headboard or other means. */
  readonly blockedForward?: boolean | undefined;
}

/** Lowest point between the axles. */
export interface LowPointInput {
  /**
   * Behind the machine's front axle; a flat belly is worst in the middle of the wheelbase. Where: tape. Example: `"25
   * in"`.
   */
  readonly behindFrontAxle: LengthInput;
  /** Above the plane its tires stand on. Where: tape. Example: `"8 in"`. */
  readonly height: LengthInput;
}

/** Lowest point between the axles, as it was read. */
export interface DecodedLowPoint {
  /** Behind the machine's front axle; a flat belly is worst in the middle of the wheelbase. */
  readonly behindFrontAxle: Derived<'in'>;
  /** Above the plane its tires stand on. */
  readonly height: Derived<'in'>;
}

/** An axle of the machine on the ramps. */
export interface MachineAxleInput {
  /** Middle to middle of its tires or tracks; `0 in` for one middle wheel. Where: tape. Example: `"54 in"`. */
  readonly gauge: LengthInput;
  /** Width of one tire or track. Where: tape. Example: `"12 in"`. */
  readonly tireWidth: LengthInput;
}

/** An axle of the machine on the ramps, as it was read. */
export interface DecodedMachineAxle {
  /** Middle to middle of its tires or tracks; `0 in` for one middle wheel. */
  readonly gauge: Derived<'in'>;
  /** Width of one tire or track. */
  readonly tireWidth: Derived<'in'>;
}

/** A tiedown. One of `marked`, `chain` and `webbing`; a marking outranks the table. */
export interface TiedownInput {
  /**
   * `direct` from trailer to cargo, back to the `same side`, or across to the `other side`. Where: look. Example:
   * `"direct"`.
   */
  readonly runs: 'direct' | 'same side' | 'other side';
  /**
   * Working load limit marked on its weakest part. Where: tag of chain, strap, binder, hook or anchor. Example: `"5,400
   * lb"`. Without it: the printed table of chain or webbing is used.
   */
  readonly marked?: WeightInput | undefined;
  /** Chain by size and grade. Without it: `marked` or `webbing` must say what it is. */
  readonly chain?: ChainInput | undefined;
  /**
   * Width of the strap in inches, as text. Where: tape. Example: `"2"`. Without it: `marked` or `chain` must say what
   * it is.
   */
  readonly webbing?: string | undefined;
}

/** A tiedown, as it was read. */
export interface DecodedTiedown {
  /** `direct` from trailer to cargo, back to the `same side`, or across to the `other side`. */
  readonly runs: 'direct' | 'same side' | 'other side';
  /** Working load limit marked on its weakest part. */
  readonly marked?: Derived<'lb'> | undefined;
  /** Chain by size and grade. */
  readonly chain?: DecodedChain | undefined;
  /** Width of the strap in inches, as text. */
  readonly webbing?: string | undefined;
}

/** Chain by size and grade. */
export interface ChainInput {
  /** Nominal size in inches, as text. Where: gauge, or the maker's tag. Example: `"3/8"`. */
  readonly size: string;
  /**
   * `30`, `43`, `70`, `80`, `100`, or `unmarked`, which counts as 30. Where: embossed on the links. Example: `"70"`.
   */
  readonly grade: '30' | '43' | '70' | '80' | '100' | 'unmarked';
}

/** Chain by size and grade, as it was read. */
export interface DecodedChain {
  /** Nominal size in inches, as text. */
  readonly size: string;
  /** `30`, `43`, `70`, `80`, `100`, or `unmarked`, which counts as 30. */
  readonly grade: '30' | '43' | '70' | '80' | '100' | 'unmarked';
}
