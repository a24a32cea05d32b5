/** The weights that a set of scale tickets gives, and those it cannot give. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  product,
  quotient,
} from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';
import { tongueRemark } from '../vehicle/hitched-axle-loads.js';
import type { Closure } from './ticket-closure.js';
import { closuresOf } from './ticket-closures.js';
import { moves, type TicketFigures, type WantedFigure, wanted, weights } from './ticket-figures.js';
import { passesOf, readTickets, type Tickets } from './tickets.js';

export interface TicketQuestion {
  readonly tickets: Tickets;
  /** What one platform rounds to: the division on the ticket or the scale's plate; `scaleDivision` is 20 lb, from memory. */
  readonly division: AnyWeight;
  /** Ball to the centre of the trailer's axles; only the moment of the bars asks for it. */
  readonly axlesAt?: AnyLength | undefined;
}

/** A figure that these tickets do not contain, and the pass that would bring it. */
export interface CannotTell {
  /** Which of the figures it is. */
  readonly figure: WantedFigure;
  readonly what: string;
  readonly needs: string;
}

/** What the tickets give; a figure that they do not contain is absent and is named in `cannotTell`. */
export interface TicketReading extends TicketFigures {
  readonly closures: readonly Closure[];
  readonly cannotTell: readonly CannotTell[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const barsOnOnly = (atLeast: Derived<'lb'> | undefined): Note =>
  note(
    'BarsOnUnderReads',
    'The only coupled pass was made with bars on: its truck axles are light by what the bars moved to the trailer, so the tongue load is not in these tickets.',
    atLeast && [atLeast],
  );

/**
 * What do these scale tickets say: tongue, trailer, axles, bars?
 *
 * S steer, D drive, A trailer axles; 1 coupled with bars on, 2 coupled with bars off, 3 truck alone.
 * `tongue = (S2 + D2) - (S3 + D3)`, or trailer alone - A2; `gross = S + D + A - (S3 + D3)`, or trailer alone;
 * `bars: A1 - A2 and S1 - S2; restored = (S1 - S2) / (S3 - S2); o / b = (S3 - S2) / tongue; moment = (A1 - A2) a`.
 * Sums of one and the same rig must agree within half a division for each reading, or the tickets do not close.
 *
 * A coupled ticket alone does not contain the tongue load, and one with bars on hides what the bars moved: neither gives a
 * tongue here. A ratio of two weights is not stated when its divisor is within the rounding of the scale.
 *
 * @param question readings of each platform, the scale's division, ball to axles when the moment is wanted
 * @returns lb. Left `TicketsCannotTell` without a ticket, `TicketsDoNotClose`, `BelowZero`, `NotAboveZero` (division, length)
 * @example readScaleTickets({ tickets: { barsOff: { steer: lb(3845), drive: lb(4955), trailer: lb(11000) }, truckAlone: { steer: lb(4300), drive: lb(3100) } }, division: scaleDivision }) // Right 1,400 lb, 12,400 lb, 0.325
 * @source common practice, no source: three passes; the arithmetic is static equilibrium, derived
 */
export function readScaleTickets(question: TicketQuestion): Either<TowingError, TicketReading> {
  const passes = passesOf(question.tickets);
  if (passes.length === 0)
    return left({
      chapter: 'towing',
      tag: 'TicketsCannotTell',
      asked: 'scale tickets',
      passes,
      needed: 'at least one pass',
    });
  const division = inPounds('scale division', question.division);
  const length = question.axlesAt === undefined ? undefined : inInches('ball to trailer axles', question.axlesAt);
  const above = allAboveZero([
    ['scale division', division],
    ...(length === undefined ? [] : [['ball to trailer axles', length] as const]),
  ]);
  if (isLeft(above)) return above;
  const readings = readTickets(question.tickets);
  if (isLeft(readings)) return readings;
  const closure = closuresOf(readings.right, division);
  if (isLeft(closure)) return closure;

  const found = { ...weights(readings.right, division), ...moves(readings.right) };
  const { tongue, offFront, frontGain, trailerGain, tongueWithin } = found;
  const leverClear =
    tongue === undefined || offFront === undefined || tongueWithin === undefined
      ? undefined
      : decide(tongue, '>', tongueWithin);
  const frontClear = offFront === undefined || frontGain === undefined ? undefined : decide(offFront, '>', division);
  const figures: TicketFigures = {
    ...found,
    ...(leverClear?.holds === true &&
      offFront &&
      tongue && { overhangOverWheelbase: quotient('overhang over wheelbase', offFront, tongue) }),
    ...(frontClear?.holds === true &&
      offFront &&
      frontGain && { restored: quotient('share of the front axle load restored', frontGain, offFront) }),
    ...(trailerGain && length && { moment: product('moment of the bars', trailerGain, length) }),
  };
  const remark = tongue === undefined ? { notes: [], decisions: [] } : tongueRemark(tongue);
  const { barsOn, barsOff, decisions } = readings.right;
  return right({
    ...figures,
    closures: closure.right.closures,
    cannotTell: wanted
      .filter(([figure]) => figures[figure] === undefined)
      .map(([figure, what, needs]) => ({ figure, what, needs })),
    notes: [
      ...remark.notes,
      ...(barsOn !== undefined && barsOff === undefined ? [barsOnOnly(found.tongueAtLeast)] : []),
    ],
    decisions: [
      ...above.right,
      ...decisions,
      ...closure.right.decisions,
      ...remark.decisions,
      ...[leverClear, frontClear].filter((one) => one !== undefined),
    ],
  });
}
