/** Everything about the tongue load in one place: its ratings, its guideline, and whether it lifts. */
import { type Guideline, type TongueAdvice, tongueAdvice } from '../../load/index.js';
import type { Check, Limits, RatingKind } from '../../ratings/index.js';
import type { Derived } from '../../trace/index.js';
import type { TowPart } from './tow-part.js';
import type { Pressing, Uplift } from './uplift.js';
import type { Weighed } from './weights.js';

export interface TonguePart {
  /** The tongue load, standing level. */
  readonly load: Derived<'lb'>;
  /** The part of the gross weight that it is. */
  readonly share: Derived<'ratio'>;
  /** The checks of coupler, hitch and tow vehicle against it, in every way of standing: those of `checks` that limit a tongue load. */
  readonly checks: readonly Check[];
  /** The load against the band that manuals, or the spec, ask for. */
  readonly guideline: TongueAdvice;
  /** The ways of standing in which it lifts: those of `uplift` that are the tongue's. */
  readonly uplift: readonly Pressing[];
}

type TongueRating = { [K in RatingKind]: Limits[K] extends 'tongue' ? K : never }[RatingKind];

/** A type error here says that a rating of a tongue load was added, or taken away. */
const limitsTongue: Readonly<Record<TongueRating, true>> = {
  'coupler tongue': true,
  'coupling S': true,
  'ball mount tongue': true,
  'receiver tongue': true,
  'tow vehicle tongue': true,
};

/** The tongue of a trailer whose balance is known. */
export function tonguePart(
  { balance }: Weighed,
  band: Guideline,
  { offLevel }: TowPart,
  checks: readonly Check[],
  { lifted }: Uplift,
): TonguePart | undefined {
  if (balance === undefined) return undefined;
  const { tongue, tongueShare } = balance;
  return {
    load: tongue,
    share: tongueShare,
    checks: checks.filter(({ kind }) => Object.hasOwn(limitsTongue, kind)),
    guideline: tongueAdvice(balance, band),
    uplift: lifted.filter(({ load }) => load === tongue || load === offLevel?.tongue),
  };
}
