/** What each limit of a tow vehicle, its hitch and a coupler allows: a trailer gross weight, or a tongue load. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Bound, RatingKind } from '../../ratings/index.js';
import { type AnyWeight, type Decision, type Derived, decide, difference, inPounds } from '../../trace/index.js';
import { isMissing, type LoadOrMissing, loadFrom, type NotChecked } from '../checks/checks-or-missing.js';
import type { TowingError } from '../errors.js';
import { allAboveZero, noneOf } from '../figures.js';
import { takesOffFront, tongueForFront, tongueForRear, tongueTaking } from '../hitch/hitch-lever.js';
import { hitchedBy } from './hitched-axle-loads.js';
import { missingOf, readFacts, sumOrMissing, type TowFacts } from './tow-facts.js';
import type { HitchPart, TowVehicle } from './tow-vehicle.js';

/** What one limit allows. */
export interface TowBound extends Bound {
  /** The rating it comes from, or the axle that would lift. */
  readonly name: RatingKind | 'tow vehicle front axle lifts';
  /** Whether `limit` is the trailer gross weight or the tongue load at which that rating is reached. */
  readonly on: 'gross' | 'tongue';
}

export interface TowBounds {
  readonly bounds: readonly TowBound[];
  /** Tongue loads not to fall below: a front axle over its rating without a trailer, which a ball behind relieves. */
  readonly least: readonly Bound[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

interface Route {
  readonly limit: RatingKind;
  readonly rating: AnyWeight | undefined;
  readonly on: 'gross' | 'tongue';
  readonly allows: (rating: Derived<'lb'>) => LoadOrMissing;
}

/** The axles before the trailer comes on: scaled, with hitch parts that were not scaled hung on the ball. */
function resting({ front, rear, hardware, lever }: TowFacts): {
  readonly front: LoadOrMissing;
  readonly rear: LoadOrMissing;
} {
  const parts = hardware['hitch hardware'];
  if (parts === undefined || front === undefined || rear === undefined)
    return { front: loadFrom(front, 'front axle, truck alone'), rear: loadFrom(rear, 'rear axle, truck alone') };
  return 'missing' in lever
    ? { front: lever, rear: lever }
    : hitchedBy(lever, front, rear, parts, 'with hitch hardware');
}

/** A gooseneck that stands ahead of the rear axle loads the front axle; any other ball does not. */
function loadsFront(hitch: TowVehicle['hitch'], lever: TowFacts['lever']): Decision | undefined {
  if (hitch !== 'gooseneck' || 'missing' in lever) return undefined;
  return lever.by === 'share' ? decide(lever.share, '<', noneOf('ratio')) : decide(lever.overhang, '<', noneOf('in'));
}

/**
 * A ball behind the rear axle takes load off the front axle: `F b / o` is the tongue load at which the front wheels leave the
 * ground, `(F - front GAWR) b / o` the one that brings an overloaded front axle back to its rating.
 */
function behindBall(
  { hitch, frontGawr }: TowVehicle,
  front: LoadOrMissing,
  lever: TowFacts['lever'],
): Pick<TowBounds, 'bounds' | 'least'> {
  if (hitch !== 'ball behind' || isMissing(front) || 'missing' in lever || !takesOffFront(lever))
    return { bounds: [], least: [] };
  const lifts = 'tow vehicle front axle lifts';
  return {
    bounds: [{ name: lifts, on: 'tongue', limit: tongueTaking('tongue load that lifts the front axle', lever, front) }],
    least:
      frontGawr === undefined
        ? []
        : [
            {
              name: 'tow vehicle front GAWR',
              limit: tongueTaking(
                'tongue load that relieves the front axle',
                lever,
                difference('front axle above its GAWR', front, inPounds('tow vehicle front GAWR', frontGawr, 'label')),
              ),
            },
          ],
  };
}

/** Every bound there are facts for. At or below zero where the tow vehicle is full without a trailer. Left `NotAboveZero` for a rating of nothing. */
export function towBounds(
  vehicle: TowVehicle,
  coupler: HitchPart | undefined,
  facts: TowFacts,
): Either<TowingError, TowBounds> {
  const { alone, lever, hardware } = facts;
  const axles = resting(facts);
  const aboard = sumOrMissing('people and cargo', {
    ...readFacts({ 'people aboard': vehicle.placard?.people, 'cargo aboard': vehicle.placard?.cargo }),
    ...hardware,
  });
  const front = loadsFront(vehicle.hitch, lever);

  const itself = (rating: Derived<'lb'>): LoadOrMissing => rating;
  const leftOver =
    (name: string, used: LoadOrMissing) =>
    (rating: Derived<'lb'>): LoadOrMissing =>
      isMissing(used) ? used : difference(`left of ${name}`, rating, used);
  const byAxle =
    (name: string, used: LoadOrMissing, tongue: typeof tongueForRear) =>
    (rating: Derived<'lb'>): LoadOrMissing =>
      isMissing(used) || 'missing' in lever
        ? { missing: missingOf(used, lever) }
        : tongue(`tongue load by ${name}`, lever, difference(`left of ${name}`, rating, used));

  const part = (of: HitchPart | undefined, gross: RatingKind, tongue: RatingKind): readonly Route[] => [
    { limit: gross, rating: of?.gross, on: 'gross', allows: itself },
    { limit: tongue, rating: of?.tongue, on: 'tongue', allows: itself },
  ];
  const asked = (of: HitchPart | undefined): boolean => vehicle.hitch === 'ball behind' || of !== undefined;
  const routes: readonly Route[] = [
    {
      limit: 'GCWR',
      rating: vehicle.gcwr,
      on: 'gross',
      allows: (rating) => (isMissing(alone) ? alone : difference('trailer by GCWR', rating, alone)),
    },
    { limit: 'tow vehicle GVWR', rating: vehicle.gvwr, on: 'tongue', allows: leftOver('tow vehicle GVWR', alone) },
    ...(vehicle.hitch === 'gooseneck' && front?.holds !== false
      ? [
          {
            limit: 'tow vehicle front GAWR',
            rating: vehicle.frontGawr,
            on: 'tongue',
            allows: byAxle('front GAWR', axles.front, tongueForFront),
          } as const,
        ]
      : []),
    {
      limit: 'tow vehicle rear GAWR',
      rating: vehicle.rearGawr,
      on: 'tongue',
      allows: byAxle('rear GAWR', axles.rear, tongueForRear),
    },
    ...(asked(vehicle.receiver) ? part(vehicle.receiver, 'receiver gross', 'receiver tongue') : []),
    ...(asked(vehicle.ballMount) ? part(vehicle.ballMount, 'ball mount gross', 'ball mount tongue') : []),
    { limit: 'ball gross', rating: vehicle.ball?.gross, on: 'gross', allows: itself },
    ...part(coupler, 'coupler gross', 'coupler tongue'),
    { limit: 'trailer tow rating', rating: vehicle.trailerRating, on: 'gross', allows: itself },
    { limit: 'tow vehicle tongue', rating: vehicle.tongueRating, on: 'tongue', allows: itself },
    {
      limit: 'occupant and cargo placard',
      rating: vehicle.placard?.limit,
      on: 'tongue',
      allows: leftOver('placard', aboard),
    },
  ];

  const { bounds: lifts, least } = behindBall(vehicle, axles.front, lever);
  const bounds: TowBound[] = [];
  const notChecked: NotChecked[] = [];
  const decisions: Decision[] = front === undefined ? [] : [front];
  for (const { limit, rating, on, allows } of routes) {
    const figure = rating === undefined ? undefined : inPounds(limit, rating, 'label');
    const above = allAboveZero(figure === undefined ? [] : [[limit, figure]]);
    if (isLeft(above)) return above;
    decisions.push(...above.right);
    const allowed = figure === undefined ? { missing: [limit] } : allows(figure);
    if (isMissing(allowed))
      notChecked.push({ kind: limit, what: `largest trailer by ${limit}`, missing: allowed.missing });
    else bounds.push({ name: limit, on, limit: allowed });
  }
  return right({ bounds: [...bounds, ...lifts], least, notChecked, decisions });
}
