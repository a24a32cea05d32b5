/**
 * What limits the place of a machine, each as one straight line in the machine's weight.
 *
 * Every weight limit is a bound on the tongue load, T = p0 + p1 P. With `T a = M0 + P (a - x)` the place is
 * `x = a (1 - p1) + (M0 - p0 a) / P`: a base place and a moment divided by the machine weight. Deck limits have no
 * moment. The window uses the lines at one weight; the heaviest machine is where two lines cross.
 */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Bound, Limits, Rating, RatingKind } from '../ratings/index.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  between,
  constant,
  type Decision,
  type Derived,
  inInches,
  inOrder,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  renamed,
  result,
  type Source,
  statics,
  times,
} from '../trace/index.js';
import { inch, quantity } from '../units/index.js';
import { balance } from './balance.js';
import type { BalanceError } from './errors.js';
import type { Guideline } from './guideline.js';
import type { Item } from './item.js';
import type { EndLimit } from './span.js';

/** The rating kinds that limit the tongue load. */
export type TongueRatingKind = { [K in RatingKind]: Limits[K] extends 'tongue' ? K : never }[RatingKind];

/** The trailer before the machine comes on. Places are measured rearward from the coupler or ball. */
export interface TrailerForPlacing {
  /** The trailer itself and whatever else stays where it is. */
  readonly items: readonly Item[];
  /** Coupler to the centre of the axle group. */
  readonly axlesAt: AnyLength;
  /** Front and rear end of the deck a machine may stand on. */
  readonly deck: { readonly front: AnyLength; readonly rear: AnyLength };
  /** The tongue shares to keep to, with their source; or the plain statement that none is used. */
  readonly guideline: Guideline | 'no guideline';
  readonly tongueLimits: readonly Rating<TongueRatingKind>[];
  /** What the tow vehicle's axles, GVWR and placard leave for the tongue load; at or below zero when they are full without a trailer. */
  readonly tongueBounds?: readonly Bound[] | undefined;
  /** What the axles may carry together: `axleGroup(...)` says it for equalised axles. */
  readonly axleLimits: readonly Rating<'axle group'>[];
}

/** The machine apart from its weight. The balance point is found with the attachment that travels. */
export interface MachineShape {
  readonly length: AnyLength;
  /** Machine front to its balance point. */
  readonly balancePoint: AnyLength;
  /** How far the true balance point may lie from that, either way. Zero when it was weighed. */
  readonly uncertainty: AnyLength;
}

/** One limit on the place of the balance point: `at = base + moment / machine weight`. */
export interface PlacementLimit {
  readonly name: string;
  /** `front`: the balance point may stand no further forward. `rear`: no further back. */
  readonly end: 'front' | 'rear';
  readonly by: 'weight' | 'deck';
  readonly base: Derived<'in'>;
  readonly moment: Derived<'lb*in'>;
  readonly source: Source | undefined;
}

/** A limit at one machine weight. */
export type PlacedLimit = PlacementLimit & EndLimit;

/** Trailer and machine read in, with every limit as a line. */
export interface Lines {
  readonly axlesAt: Derived<'in'>;
  /** Weight of all that stays where it is, and its tongue load times the distance to the axles. */
  readonly weight: Derived<'lb'>;
  readonly moment: Derived<'lb*in'>;
  readonly balancePoint: Derived<'in'>;
  readonly uncertainty: Derived<'in'>;
  readonly limits: readonly PlacementLimit[];
  readonly decisions: readonly Decision[];
}

const label = ({ rating, part: of }: Rating<RatingKind>): string => (of === undefined ? rating : `${of} ${rating}`);

function deckLimits(
  front: Derived<'in'>,
  rear: Derived<'in'>,
  length: Derived<'in'>,
  balancePoint: Derived<'in'>,
): readonly PlacementLimit[] {
  const deck = { by: 'deck', moment: constant(quantity(0, 'lb*in')), source: undefined } as const;
  return [
    { ...deck, name: 'deck front', end: 'front', base: result('place by deck front', plus(front, balancePoint)) },
    {
      ...deck,
      name: 'deck rear',
      end: 'rear',
      base: result('place by deck rear', minus(rear, minus(length, balancePoint))),
    },
  ];
}

/** `T <= limit` for a hitch part, `low x W <= T <= high x W` for a guideline, `W - T <= limit` for the axles. */
function weightLimits(
  trailer: TrailerForPlacing,
  a: Derived<'in'>,
  weight: Derived<'lb'>,
  moment: Derived<'lb*in'>,
): readonly PlacementLimit[] {
  const onTongue = (name: string, limit: Derived<'lb'>, source: Source | undefined): PlacementLimit => ({
    name,
    end: 'front',
    by: 'weight',
    base: a,
    source,
    moment: result(`moment by ${name}`, minus(moment, times(limit, a))),
  });
  const tongue = [
    ...trailer.tongueLimits.map((limit) => onTongue(label(limit), limit.limit, limit.clause)),
    ...(trailer.tongueBounds ?? []).map(({ name, limit }) => onTongue(name, limit, undefined)),
  ];
  const axles = trailer.axleLimits.map(
    (limit): PlacementLimit => ({
      name: label(limit),
      end: 'rear',
      by: 'weight',
      base: constant(inch(0)),
      source: limit.clause,
      moment: result(`moment by ${label(limit)}`, plus(moment, times(minus(limit.limit, weight), a))),
    }),
  );
  if (trailer.guideline === 'no guideline') return [...tongue, ...axles];
  const { low, high, source } = trailer.guideline;
  const byShare = (name: string, end: 'front' | 'rear', share: Derived<'ratio'>): PlacementLimit => ({
    name,
    end,
    by: 'weight',
    source,
    base: result(`base place by ${name}`, minus(a, times(share, a))),
    moment: result(`moment by ${name}`, minus(moment, times(share, weight, a))),
  });
  return [...tongue, ...axles, byShare('guideline low', 'rear', low), byShare('guideline high', 'front', high)];
}

/** Reads trailer and machine in, refuses what cannot be placed, and writes each limit as a line. */
export function linesOf(
  trailer: TrailerForPlacing,
  machine: MachineShape,
): Either<BalanceError | OutsideItsRange, Lines> {
  const without = balance(trailer.items, { axlesAt: trailer.axlesAt });
  if (isLeft(without)) return without;
  const { axlesAt: a } = without.right;
  const weight = renamed('weight without the machine', without.right.gross);
  const front = inInches('deck front', trailer.deck.front);
  const rear = inInches('deck rear', trailer.deck.rear);
  const length = inInches('machine length', machine.length);
  const balancePoint = inInches('balance point behind machine front', machine.balancePoint);
  const uncertainty = inInches('balance point uncertainty', machine.uncertainty);
  const guarded = allHold([
    inOrder('deck ends', front, rear),
    aboveZero('machine length', length),
    ...between('balance point behind machine front', balancePoint, constant(inch(0)), length, 'included'),
    notNegative('balance point uncertainty', uncertainty),
  ]);
  if (isLeft(guarded)) return guarded;
  const moment = result(
    'tongue moment without the machine',
    minus(times(weight, a), plus(...without.right.lines.map((line) => line.moment))),
    statics,
  );
  const limits = [...deckLimits(front, rear, length, balancePoint), ...weightLimits(trailer, a, weight, moment)];
  const guideline = trailer.guideline === 'no guideline' ? [] : trailer.guideline.decisions;
  return right({
    axlesAt: a,
    weight,
    moment,
    balancePoint,
    uncertainty,
    limits,
    decisions: [...without.right.decisions, ...guideline, ...guarded.right],
  });
}

/** A limit at one machine weight. The caller has ruled out a weight of zero. */
export function placed(limit: PlacementLimit, machineWeight: Derived<'lb'>): PlacedLimit {
  const at =
    limit.by === 'deck'
      ? limit.base
      : result(`place by ${limit.name}`, plus(limit.base, over(limit.moment, machineWeight)), limit.source ?? statics);
  return { ...limit, at };
}

/** The same limit when the balance point may lie `u` to either side: weight limits close in by `u`, the deck does not. */
export function madeSure(limit: PlacementLimit, u: Derived<'in'>): PlacementLimit {
  if (limit.by === 'deck') return limit;
  const base =
    limit.end === 'front'
      ? result(`sure base place by ${limit.name}`, plus(limit.base, u))
      : result(`sure base place by ${limit.name}`, minus(limit.base, u));
  return { ...limit, base };
}
