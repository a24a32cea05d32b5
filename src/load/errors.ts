/** What can go wrong with weights and balance: plain data. */
import type { Quantity } from '../units/index.js';
import type { LoadingError } from './loading-errors.js';

/** The axles stand at the coupler or ahead of it, so there is nothing to balance on. */
export interface AxlesNotBehindCoupler {
  readonly chapter: 'load';
  readonly tag: 'AxlesNotBehindCoupler';
  readonly axlesAt: Quantity<'in'>;
  readonly path?: string;
}

/** The weights add up to nothing. */
export interface NothingWeighed {
  readonly chapter: 'load';
  readonly tag: 'NothingWeighed';
  readonly gross: Quantity<'lb'>;
  readonly path?: string;
}

/** The tongue load of a trailer standing alone is more than the trailer. */
export interface TongueAboveWeight {
  readonly chapter: 'load';
  readonly tag: 'TongueAboveWeight';
  readonly of: string;
  readonly tongue: Quantity<'lb'>;
  readonly weight: Quantity<'lb'>;
  readonly path?: string;
}

/** A tongue share outside zero to one, or a band whose low end is above its high end. */
export interface ShareOutOfRange {
  readonly chapter: 'load';
  readonly tag: 'ShareOutOfRange';
  readonly low: Quantity<'ratio'>;
  readonly high: Quantity<'ratio'>;
  readonly path?: string;
}

/** A payload is the least of its limits, and there is none. */
export interface NoLimits {
  readonly chapter: 'load';
  readonly tag: 'NoLimits';
  readonly path?: string;
}

export type BalanceError = AxlesNotBehindCoupler | NothingWeighed | TongueAboveWeight | ShareOutOfRange | NoLimits;
export type LoadError = BalanceError | LoadingError;
