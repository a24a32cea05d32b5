/** Where may the machine stand? The interval of places that every limit leaves, or the two limits that leave none. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
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
} from '../trace/index.js';
import { compare, showBrief } from '../units/index.js';
import type { BalanceError } from './errors.js';
import {
  type Lines,
  linesOf,
  type MachineShape,
  madeSure,
  type PlacedLimit,
  placed,
  type TrailerForPlacing,
} from './placement-limits.js';
import { type Span, type SpanEnd, spanOf } from './span.js';

/** A machine to be placed. */
export interface MachineToPlace extends MachineShape {
  readonly weight: AnyWeight;
}

/** One end of the window, and what the trailer feels with the balance point there. */
export interface WindowEnd extends SpanEnd<PlacedLimit> {
  /** Where the machine's front stands, which is what a tape measures. */
  readonly machineFront: Derived<'in'>;
  readonly tongue: Derived<'lb'>;
  readonly tongueShare: Derived<'ratio'>;
  readonly axleLoad: Derived<'lb'>;
}

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
  /** Every limit, with where it stands. */
  readonly limits: readonly PlacedLimit[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/** One sentence that names both sides of an empty window, with the figures. @example conflictText(orThrow(placementWindow(trailer, { weight: lb(9200), length: inch(120), balancePoint: inch(52), uncertainty: inch(2) }))).length > 0 // true */
export function conflictText({ lower, upper }: Span<PlacedLimit>): string {
  const names = (end: SpanEnd<PlacedLimit>): string => end.setBy.map(({ name }) => name).join(' and ');
  return `${names(lower)} asks for a balance point at ${showBrief(lower.at.value)} or further back, ${names(upper)} for ${showBrief(upper.at.value)} or further forward`;
}

function notesOn(
  span: Span<PlacedLimit>,
  sure: Span<PlacedLimit>,
  lines: Lines,
  trailer: TrailerForPlacing,
): readonly Note[] {
  const ends = (of: Span<PlacedLimit>): readonly Derived<'in'>[] => [of.lower.at, of.upper.at, of.width];
  return [
    ...(span.empty ? [note('EmptyWindow', `No place meets every limit: ${conflictText(span)}.`, ends(span))] : []),
    ...(!span.empty && sure.empty
      ? [
          note(
            'WindowWithinUncertainty',
            `The window is narrower than the balance point is known: ${conflictText(sure)}. Weigh the machine by its axles.`,
            ends(sure),
          ),
        ]
      : []),
    ...(compare(span.upper.at.value, lines.axlesAt.value) > 0
      ? [
          note(
            'BehindTheAxles',
            'Toward the rear end of the window the machine balances behind the axles and takes load off the tongue.',
            [span.upper.at, lines.axlesAt],
          ),
        ]
      : []),
    ...(trailer.guideline === 'no guideline'
      ? [note('NoGuideline', 'No tongue guideline was given, so no end is set by a tongue that is too light.')]
      : []),
    ...(trailer.tongueLimits.length + (trailer.tongueBounds?.length ?? 0) === 0
      ? [note('NoTongueLimit', 'Not checked: no hitch or coupler tongue rating was given.')]
      : []),
    ...(trailer.axleLimits.length === 0 ? [note('NoAxleLimit', 'Not checked: no axle group rating was given.')] : []),
    note('GrossNotHere', 'Moving a machine never changes the gross weight: GVWR is a separate check.'),
  ];
}

/**
 * Where on the deck may this machine stand?
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
  const span = between('the window', limits);
  const sure = between(
    'the sure window',
    lines.right.limits.map((limit) => placed(madeSure(limit, u), load)),
  );
  const feel = (where: string, end: SpanEnd<PlacedLimit>): WindowEnd => {
    const tongue = result(`tongue load at the ${where}`, over(plus(moment, times(load, minus(a, end.at))), a), statics);
    return {
      ...end,
      tongue,
      machineFront: result(`machine front at the ${where}`, minus(end.at, balancePoint)),
      tongueShare: result(`tongue share at the ${where}`, over(tongue, gross)),
      axleLoad: result(`axle load at the ${where}`, minus(gross, tongue)),
    };
  };
  return right({
    ...span,
    lower: feel('front end', span.lower),
    upper: feel('rear end', span.upper),
    gross,
    sure,
    limits,
    poundsPerInch: result('tongue load per inch', over(load, a), statics),
    tongueUncertainty: result('tongue uncertainty', over(times(load, u), a), statics),
    decisions: [...lines.right.decisions, ...guarded.right],
    notes: notesOn(span, sure, lines.right, trailer),
  });
}

const between = (name: string, limits: readonly PlacedLimit[]): Span<PlacedLimit> =>
  spanOf(
    name,
    limits.filter(({ end }) => end === 'front'),
    limits.filter(({ end }) => end === 'rear'),
  );
