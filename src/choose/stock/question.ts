/** The question of a yard, and its answer. */
import type { AssessError, Assessment, AssessmentVerdict } from '../../assessment/index.js';
import type { AnyWeight, Derived } from '../../trace/index.js';

/** What is wanted of a trailer in addition to carrying the job. */
export interface Want {
  /** Payload wanted, at the tongue share that the place gives. */
  readonly payload?: AnyWeight;
  /** What is to be left of it. */
  readonly reserve?: AnyWeight;
  /** Duties that must not apply and limits that must not be crossed, by the id of the finding or of one of its rules. */
  readonly lines?: readonly string[];
}

/** The question. */
export interface StockQuestion {
  /** The trailers of the yard: a name and a spec as JSON each. Their own cargo and tow vehicle are put aside. */
  readonly stock: Readonly<Record<string, unknown>>;
  /** The tow vehicle, as the `tow` part of a spec. */
  readonly tow?: unknown;
  /** The pieces, as the `cargo` part of a spec; places are found where deck, length and balance point are known. */
  readonly cargo: readonly unknown[];
  /** What else is wanted. */
  readonly want?: Want;
}

/** A trailer with the job on it. */
export interface StockTrailer {
  /** Its name in the stock. */
  readonly name: string;
  /** The answer at the best place. */
  readonly assessment: Assessment;
  /** The verdict there: the best of all places at whole inches. */
  readonly verdict: AssessmentVerdict;
  /** True when the verdict is `within` and all that is wanted is met. */
  readonly fits: boolean;
  /** GVWR, lb. */
  readonly gvwr: Derived<'lb'> | undefined;
  /** The front of each piece behind the coupler, in. */
  readonly fronts?: readonly number[];
  /** Payload at the tongue share that the place gives, lb. */
  readonly payload: Derived<'lb'> | undefined;
  /** Payload less what is wanted and the reserve, lb. */
  readonly left: Derived<'lb'> | undefined;
  /** Why it does not fit: the one reason, with figures. */
  readonly reason?: string;
  /** What another hitch part would have to be rated for, where that alone puts it right. Another place never does: all were tried. */
  readonly hitchPart?: string;
}

/** The stock against the job. */
export interface StockFit {
  /** Those that fit, the smallest GVWR first, then the lightest. */
  readonly fits: readonly StockTrailer[];
  /** The others: those that only ask attention first, then those that are over; smallest first. */
  readonly others: readonly StockTrailer[];
  /** Trailers whose spec could not be read or answered; the others are answered. */
  readonly failed: readonly { readonly name: string; readonly error: AssessError }[];
}
