/** Placement window: the interval of balance-point positions that meets every limit. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Note } from '../../ratings/index.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import type { BalanceError } from '../errors.js';
import { linesOf } from './limit-lines.js';
import { type MachineShape, madeSure, type PlacedLimit, placed, type TrailerForPlacing } from './limits.js';
import { type Span, type SpanEnd, spanOf } from './span.js';
import { notesOn } from './window-notes.js';

/** A machine to be placed. */
export interface MachineToPlace extends MachineShape {
  readonly weight: AnyWeight;
}

/** One end of the window, and the loads of the trailer with the balance point there. */
export interface WindowEnd extends SpanEnd<PlacedLimit> {
  /** Position of the machine's front, which a tape can measure, in. */
  readonly machineFront: Derived<'in'>;
  readonly tongue: Derived<'lb'>;
  readonly tongueShare: Derived<'ratio'>;
  readonly axleLoad: Derived<'lb'>;
}

/** The positions of the balance point that meet every limit. */
export interface PlacementWindow extends Span<PlacedLimit> {
  readonly lower: WindowEnd;
  readonly upper: WindowEnd;
  readonly gross: Derived<'lb'>;
  /** What one inch forward adds to the tongue. */
  readonly poundsPerInch: Derived<'lb/in'>;
  /** The places that hold wherever within its uncertainty the balance point truly lies. */
  readonly sure: Span<PlacedLimit>;
  /** What the uncertainty is worth on the tongue, either way. */
  readonly tongueUncertainty: Derived<'lb'>;
  /** Every limit with its position at this machine weight. */
  readonly limits: readonly PlacedLimit[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Where on the deck may this machine be placed?
 *
 * With a coupler to axles, W0 and T0 weight and tongue load without the machine, P the machine weight, x its balance point
 * behind the coupler: hitch `x >= a [1 - (Tmax - T0)/P]`; guideline share f `x = a [1 - f - (f W0 - T0)/P]`; axles
 * `x <= a (G - A0)/P`; deck `d0 + g <= x <= d1 - (l - g)`, g balance point behind the machine front, l machine length.
 * The window runs from the greatest front limit to the least rear limit.
 *
 * Uncertainty: `T = T0 + P (1 - x/a)`, so a balance point that truly lies up to u from where it is taken to be puts up to
 * `P u / a` more or less on the tongue. A place is sure when x - u and x + u both meet every weight limit, so weight
 * limits close in by u at both ends. Deck limits do not: they are met by the machine's front and rear, which a tape finds
 * whatever the balance point is.
 *
 * Level trailer; an axle group that acts at one place (equalised). GVWR does not depend on the place and is not asked here.
 *
 * @param trailer the items that stay, the axles, deck ends and limits; inches behind the coupler, by tape along the frame
 * @param machine weight (lb, scale), length, balance point behind its front face and how well that is known (in)
 * @returns Left from `balance`, or `OutsideItsRange`. An empty
 * window is an answer: `empty`, a negative width, and both ends with the limits that set them
 * @example orThrow(placementWindow(trailer, { weight: lb(9200), length: inch(120), balancePoint: inch(52), uncertainty: inch(2) })).width // 3.3 in
 * @source static equilibrium, derived; the guideline carries its own source
 */
export function placementWindow(
  trailer: TrailerForPlacing,
  machine: MachineToPlace,
): Either<BalanceError | OutsideItsRange, PlacementWindow> {
  const lines = linesOf(trailer, machine);
  if (isLeft(lines)) return lines;
  const { axlesAt: a, weight, moment, balancePoint, uncertainty: u } = lines.right;
  const load = inPounds('machine weight', machine.weight);
  const guarded = allHold([aboveZero('machine weight', load)]);
  if (isLeft(guarded)) return guarded;

  const gross = result('gross weight', plus(weight, load));
  const limits = lines.right.limits.map((limit) => placed(limit, load));
  const decisions = [...lines.right.decisions, ...guarded.right];
  const span = between('the window', limits, decisions);
  const sure = between(
    'the sure window',
    lines.right.limits.map((limit) => placed(madeSure(limit, u), load)),
    decisions,
  );
  const feel = (where: string, end: SpanEnd<PlacedLimit>): WindowEnd => {
    const tongue = result(`tongue load at the ${where}`, over(plus(moment, times(load, minus(a, end.at))), a), statics);
    return {
      tongue,
      machineFront: result(`machine front at the ${where}`, minus(end.at, balancePoint)),
      tongueShare: result(`tongue share at the ${where}`, over(tongue, gross)),
      axleLoad: result(`axle load at the ${where}`, minus(gross, tongue)),
      ...end,
    };
  };
  return right({
    gross,
    sure,
    limits,
    poundsPerInch: result('tongue load per inch', over(load, a), statics),
    tongueUncertainty: result('tongue uncertainty', over(times(load, u), a), statics),
    decisions,
    notes: notesOn(span, sure, lines.right, trailer),
    ...span,
    lower: feel('front end', span.lower),
    upper: feel('rear end', span.upper),
  });
}

const between = (name: string, limits: readonly PlacedLimit[], decisions: Decision[]): Span<PlacedLimit> =>
  spanOf(
    name,
    limits.filter(({ end }) => end === 'front'),
    limits.filter(({ end }) => end === 'rear'),
    decisions,
  );
