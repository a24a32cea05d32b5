/** How hard a trailer is worked: the share of its trips that come near a limit. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AssessError, Assessment } from '../../assessment/index.js';
import type { Quantity } from '../../units/index.js';
import { Decimal, ofDecimal } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import { nothingToAnswer, questionRefusal } from '../refusal.js';
import { fitOne } from './fit-one.js';

/** A load and how often it rides. */
export interface Trip {
  /** What rides, in shop words. */
  readonly name: string;
  /** The pieces, as the `cargo` part of a spec. */
  readonly cargo: readonly unknown[];
  /** How often it rides: trips a year, or any other count alike for all. */
  readonly count: number;
}

/** One load on one trailer. */
export interface TripFound {
  /** What rides. */
  readonly name: string;
  /** How often. */
  readonly count: number;
  /** The check that uses the greatest share of its limit. */
  readonly closest: string;
  /** That share. */
  readonly used: Quantity<'ratio'>;
  /** True when it uses more than the share asked about. */
  readonly above: boolean;
}

/** A trailer and its trips. */
export interface Duty {
  /** Share of the trips that use more of some limit than the share asked about. */
  readonly share: Quantity<'ratio'>;
  /** Each load at its best place, in the order given. */
  readonly trips: readonly TripFound[];
}

function tripOf({ name, count }: Trip, { tightest }: Assessment, most: number): TripFound {
  const [first] = tightest;
  const used = first?.used.value ?? (ofDecimal(new Decimal(0), 'ratio') as Quantity<'ratio'>);
  return { name, count, closest: first?.what ?? 'nothing checked', used, above: used.value.gt(most) };
}

/**
 * How many of its trips take this trailer above nine tenths of some limit?
 *
 * Each load is assessed at its own best place; the share is of the counted trips. Ask the same of the trailer one class up, and compare.
 *
 * Not a fatigue life: it only counts how often a limit is near.
 *
 * @param question the trailer as a spec, the tow vehicle, the trips, and the share of a limit asked about (0.9 by default)
 * @returns the share of the trips above it; Left as `assess`, `NothingToAnswer` without trips, `UnusableFigure` for a count that is not above zero
 * @example orThrow(dutyOf({ trailer: spec, tow: spec.tow, trips: [{ name: 'excavator', cargo: spec.cargo, count: 40 }] })).share // 1
 * @source the checks of `assess`; nine tenths is common practice, no source
 */
export function dutyOf(question: {
  readonly trailer: unknown;
  readonly tow?: unknown;
  readonly trips: readonly Trip[];
  readonly most?: number;
}): Either<AssessError | ChooseError, Duty> {
  const unusable = questionRefusal('duty', question);
  if (unusable !== undefined) return left(unusable);
  const { trailer, tow, trips, most = 0.9 } = question;
  if (trips.length === 0) return left(nothingToAnswer('how hard the trailer is worked', 'a trip', 'trips'));
  const found: TripFound[] = [];
  for (const [i, trip] of trips.entries()) {
    if (!(trip.count > 0) || !Number.isFinite(trip.count))
      return left({
        chapter: 'choose',
        tag: 'UnusableFigure',
        path: `trips.${i}.count`,
        found: String(trip.count),
        needed: 'a count greater than zero',
      });
    const fitted = fitOne(trailer, { tow, cargo: trip.cargo });
    if (isLeft(fitted)) return left({ ...fitted.left, path: `trips.${i}: ${fitted.left.path ?? 'the spec'}` });
    found.push(tripOf(trip, fitted.right.assessment, most));
  }
  const sum = (some: readonly TripFound[]): number => some.reduce((all, { count }) => all + count, 0);
  const share = new Decimal(sum(found.filter(({ above }) => above))).div(sum(found));
  return right({ share: ofDecimal(share, 'ratio'), trips: found });
}
