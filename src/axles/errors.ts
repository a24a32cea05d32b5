/** What can go wrong with axles: plain data. */
import type { WireQuantity } from '../units/index.js';
import type { HardwareError } from './hardware/hardware-errors.js';

/** The GAWR on the label is higher than the weakest part of its axle system bears: label or part is wrong. */
export interface GawrAboveParts {
  readonly chapter: 'axles';
  readonly tag: 'GawrAboveParts';
  readonly of: string;
  readonly gawr: WireQuantity<'lb'>;
  readonly part: string;
  readonly bears: WireQuantity<'lb'>;
  readonly path?: string;
}

/** Nothing is known of an axle: no GAWR, no part. */
export interface AxleUnknown {
  readonly chapter: 'axles';
  readonly tag: 'AxleUnknown';
  readonly of: string;
  readonly path?: string;
}

/** A group needs at least one axle. */
export interface NoAxles {
  readonly chapter: 'axles';
  readonly tag: 'NoAxles';
  readonly path?: string;
}

/** How more than two independently sprung axles share a load is unknown without their spring rates. */
export interface SharingUnknown {
  readonly chapter: 'axles';
  readonly tag: 'SharingUnknown';
  readonly axles: number;
  readonly path?: string;
}

/** A rating of zero or less. */
export interface RatingNotPositive {
  readonly chapter: 'axles';
  readonly tag: 'RatingNotPositive';
  readonly of: string;
  readonly part: string;
  readonly rating: WireQuantity<'lb'>;
  readonly path?: string;
}

export type AxlesError = GawrAboveParts | AxleUnknown | NoAxles | SharingUnknown | RatingNotPositive | HardwareError;
