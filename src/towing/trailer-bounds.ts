/** What each limit of a tow vehicle and its hitch allows a trailer to weigh. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Bound, RatingKind } from '../ratings/index.js';
import { type AnyWeight, decide, type Decision, type Derived, difference, inPounds, quotient } from '../trace/index.js';
import type { TowingError } from './errors.js';
import { allAboveZero, noneOf } from './figures.js';
import { isMissing, loadFrom, type LoadOrMissing, type NotChecked } from './findings.js';
import { hitchedBy } from './hitched-axle-loads.js';
import { grossForFront, grossForRear, type Lever } from './hitch-lever.js';
import { missingOf, readFacts, sumOrMissing, type TowFacts } from './tow-facts.js';
import type { HitchPart, TowVehicle } from './tow-vehicle.js';

/** What one limit allows. */
export interface TrailerBound extends Bound {
  /** The rating it comes from; `limit` is the trailer gross weight at which that rating is reached. */
  readonly name: RatingKind;
}

export interface TrailerBounds {
  readonly bounds: readonly TrailerBound[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

interface Route {
  readonly limit: RatingKind;
  readonly rating: AnyWeight | undefined;
  readonly trailer: (rating: Derived<'lb'>) => LoadOrMissing;
}

/** The axles before the trailer comes on: scaled, with hitch parts that were not scaled hung on the ball. */
function resting({ front, rear, hardware, lever }: TowFacts): { readonly front: LoadOrMissing; readonly rear: LoadOrMissing } {
  const parts = hardware['hitch hardware'];
  if (parts === undefined || front === undefined || rear === undefined) return { front: loadFrom(front, 'front axle, truck alone'), rear: loadFrom(rear, 'rear axle, truck alone') };
  return 'missing' in lever ? { front: lever, rear: lever } : hitchedBy(lever, front, rear, parts, 'with hitch hardware');
}

/** A gooseneck that stands ahead of the rear axle loads the front axle; any other ball does not. */
function loadsFront(hitch: TowVehicle['hitch'], lever: TowFacts['lever']): Decision | undefined {
  if (hitch !== 'gooseneck' || 'missing' in lever) return undefined;
  return lever.by === 'share' ? decide(lever.share, '<', noneOf('ratio')) : decide(lever.overhang, '<', noneOf('in'));
}

/** Every bound there are facts for, at this tongue share. Left `NotAboveZero` for a rating of nothing. */
export function trailerBounds(vehicle: TowVehicle, coupler: HitchPart | undefined, facts: TowFacts, share: Derived<'ratio'>): Either<TowingError, TrailerBounds> {
  const { alone, lever, hardware } = facts;
  const axles = resting(facts);
  const aboard = sumOrMissing('people and cargo', { ...readFacts({ 'people aboard': vehicle.placard?.people, 'cargo aboard': vehicle.placard?.cargo }), ...hardware });
  const front = loadsFront(vehicle.hitch, lever);

  const itself = (rating: Derived<'lb'>): LoadOrMissing => rating;
  const overShare = (name: string) => (rating: Derived<'lb'>): LoadOrMissing => quotient(`trailer by ${name}`, rating, share);
  const leftOver = (name: string, used: LoadOrMissing) => (rating: Derived<'lb'>): LoadOrMissing =>
    (isMissing(used) ? used : quotient(`trailer by ${name}`, difference(`left of ${name}`, rating, used), share));
  const byAxle = (name: string, used: LoadOrMissing, gross: (symbol: string, by: Lever, slack: Derived<'lb'>, f: Derived<'ratio'>) => Derived<'lb'>) => (rating: Derived<'lb'>): LoadOrMissing =>
    (isMissing(used) || 'missing' in lever ? { missing: missingOf(used, lever) } : gross(`trailer by ${name}`, lever, difference(`left of ${name}`, rating, used), share));

  const part = (of: HitchPart | undefined, gross: RatingKind, tongue: RatingKind): readonly Route[] => [
    { limit: gross, rating: of?.gross, trailer: itself },
    { limit: tongue, rating: of?.tongue, trailer: overShare(tongue) },
  ];
  const asked = (of: HitchPart | undefined): boolean => vehicle.hitch === 'ball behind' || of !== undefined;
  const routes: readonly Route[] = [
    { limit: 'GCWR', rating: vehicle.gcwr, trailer: (rating) => (isMissing(alone) ? alone : difference('trailer by GCWR', rating, alone)) },
    { limit: 'tow vehicle GVWR', rating: vehicle.gvwr, trailer: leftOver('tow vehicle GVWR', alone) },
    ...(vehicle.hitch === 'gooseneck' && front?.holds !== false ? [{ limit: 'tow vehicle front GAWR', rating: vehicle.frontGawr, trailer: byAxle('front GAWR', axles.front, grossForFront) } as const] : []),
    { limit: 'tow vehicle rear GAWR', rating: vehicle.rearGawr, trailer: byAxle('rear GAWR', axles.rear, grossForRear) },
    ...(asked(vehicle.receiver) ? part(vehicle.receiver, 'receiver gross', 'receiver tongue') : []),
    ...(asked(vehicle.ballMount) ? part(vehicle.ballMount, 'ball mount gross', 'ball mount tongue') : []),
    { limit: 'ball gross', rating: vehicle.ball?.gross, trailer: itself },
    ...part(coupler, 'coupler gross', 'coupler tongue'),
    { limit: 'trailer tow rating', rating: vehicle.trailerRating, trailer: itself },
    { limit: 'tow vehicle tongue', rating: vehicle.tongueRating, trailer: overShare('tow vehicle tongue') },
    { limit: 'occupant and cargo placard', rating: vehicle.placard?.limit, trailer: leftOver('placard', aboard) },
  ];

  const bounds: TrailerBound[] = [];
  const notChecked: NotChecked[] = [];
  const decisions: Decision[] = front === undefined ? [] : [front];
  for (const { limit, rating, trailer } of routes) {
    const figure = rating === undefined ? undefined : inPounds(limit, rating, 'label');
    const above = allAboveZero(figure === undefined ? [] : [[limit, figure]]);
    if (isLeft(above)) return above;
    decisions.push(...above.right);
    const bound = figure === undefined ? { missing: [limit] } : trailer(figure);
    if (isMissing(bound)) notChecked.push({ what: `largest trailer by ${limit}`, missing: bound.missing });
    else bounds.push({ name: limit, limit: bound });
  }
  return right({ bounds, notChecked, decisions });
}
