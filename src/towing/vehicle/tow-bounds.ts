/** What each limit of a tow vehicle, its hitch and a coupler allows: a trailer gross weight, or a tongue load. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { RatingKind } from '../../ratings/index.js';
import { type AnyWeight, type Decision, type Derived, difference, inPounds } from '../../trace/index.js';
import { isMissing, type LoadOrMissing, type NotChecked } from '../checks/checks-or-missing.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';
import { tongueForFront, tongueForRear } from '../hitch/hitch-lever.js';
import type { TowBound, TowBounds } from './tow-bound.js';
import { behindBall, loadsFront, resting } from './tow-bounds-axles.js';
import { missingOf, readFacts, sumOrMissing, type TowFacts } from './tow-facts.js';
import type { HitchPart, TowVehicle } from './tow-vehicle.js';

interface Route {
  readonly limit: RatingKind;
  readonly rating: AnyWeight | undefined;
  readonly on: 'gross' | 'tongue';
  readonly allows: (rating: Derived<'lb'>) => LoadOrMissing;
}

/** Every bound with known inputs. At or below zero where the tow vehicle is full without a trailer. Left `NotAboveZero` for a rating of zero. */
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
