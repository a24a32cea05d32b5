/** Every check that the load on the ball decides. Another way of standing changes that load, and they are asked again. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Decision, Derived } from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { type HitchedAxleLoads, hitchedBy } from '../vehicle/hitched-axle-loads.js';
import { missingOf, readFacts, sumLoads, sumOrMissing, type TowFacts, towFacts } from '../vehicle/tow-facts.js';
import type { HitchPart, TowVehicle } from '../vehicle/tow-vehicle.js';
import { ask, type Findings, gathered, isMissing, loadFrom } from './checks-or-missing.js';

type Asked = readonly Either<TowingError, Findings>[];

/** The tow vehicle's checks of the load on its ball, rating by rating. */
export interface AskedOfTongue {
  readonly hitched?: HitchedAxleLoads;
  readonly vehicle: Asked;
  readonly receiver: Asked;
  readonly ballMount: Asked;
  readonly rating: Asked;
  readonly placard: Asked;
}

/** Makes the checks; `how` names the attitude of the trailer. */
export function askedOfTongue(
  vehicle: TowVehicle,
  { front, rear, hardware, alone, lever }: TowFacts,
  tongue: Derived<'lb'> | undefined,
  how?: string,
): AskedOfTongue {
  const as = (symbol: string): string => (how === undefined ? symbol : `${symbol}, ${how}`);
  const onTongue = loadFrom(tongue, 'tongue load');
  const onBall = sumOrMissing(as('load on the ball'), { 'tongue load': tongue, ...hardware });
  const hitched =
    front === undefined || rear === undefined || isMissing(onBall) || 'missing' in lever
      ? undefined
      : hitchedBy(lever, front, rear, onBall, as('hitched'));
  const axleFacts = missingOf(alone, onBall, lever);
  const { receiver, ballMount, placard = {} } = vehicle;
  const aboard = sumOrMissing(as('people, cargo and tongue'), {
    ...readFacts({ 'people aboard': placard.people, 'cargo aboard': placard.cargo }),
    'tongue load': tongue,
    ...hardware,
  });
  const asked = (part: HitchPart | undefined): boolean => vehicle.hitch === 'ball behind' || part !== undefined;
  return {
    ...(hitched && { hitched }),
    vehicle: [
      ask(
        'tow vehicle GVWR',
        'tow vehicle hitched',
        vehicle.gvwr,
        sumLoads(as('tow vehicle hitched'), alone, onTongue),
        { how },
      ),
      ask(
        'tow vehicle front GAWR',
        'tow vehicle front axle',
        vehicle.frontGawr,
        loadFrom(hitched?.front, ...axleFacts),
        { how },
      ),
      ask('tow vehicle rear GAWR', 'tow vehicle rear axle', vehicle.rearGawr, loadFrom(hitched?.rear, ...axleFacts), {
        how,
      }),
    ],
    receiver: asked(receiver) ? [ask('receiver tongue', 'tongue', receiver?.tongue, onTongue, { how })] : [],
    ballMount: asked(ballMount) ? [ask('ball mount tongue', 'tongue', ballMount?.tongue, onTongue, { how })] : [],
    rating: [ask('tow vehicle tongue', 'tongue', vehicle.tongueRating, onTongue, { how })],
    placard: [ask('occupant and cargo placard', 'tow vehicle load', placard.limit, aboard, { how })],
  };
}

/** The load on the ball, the ratings it presses on, and the way of standing. */
export interface TongueQuestion {
  readonly tongue: Derived<'lb'>;
  /** Left out, only the coupler is asked. */
  readonly vehicle?: TowVehicle | undefined;
  readonly coupler?: HitchPart | undefined;
  readonly how: string;
}

export interface TongueChecks extends Findings {
  /** The axles as hitched; absent when a fact for them is missing. */
  readonly hitched?: HitchedAxleLoads;
  readonly decisions: readonly Decision[];
}

/**
 * Do hitch, coupler and tow vehicle bear the tongue load of another way of standing?
 *
 * Coupler, receiver, ball mount and the vehicle maker's tongue rating against the tongue load; tow vehicle GVWR, its axles'
 * ratings and the placard against what that load makes of them, bars off.
 *
 * Not the ratings of the whole, which no way of standing changes: `towChecks` asks them, and these too for the trailer level.
 *
 * @param question the tongue load in that way of standing, lb, and its name, `off level`
 * @returns checks in lb, each named by the way of standing. Left as `towChecks`; a tongue that pulls up is an answer
 * @example tongueChecks({ tongue: asDerived('tongue load', lb(964)), coupler: { tongue: lb(900) }, how: 'off level' }) // Right -64 lb, 'over'
 * @source as towChecks
 */
export function tongueChecks({ tongue, vehicle, coupler, how }: TongueQuestion): Either<TowingError, TongueChecks> {
  const ofCoupler = ask('coupler tongue', 'tongue', coupler?.tongue, tongue, { how });
  if (vehicle === undefined) return ofCoupler;
  const facts = towFacts(vehicle);
  if (isLeft(facts)) return facts;
  const asked = askedOfTongue(vehicle, facts.right, tongue, how);
  const found = gathered([
    ...asked.vehicle,
    ...asked.receiver,
    ...asked.ballMount,
    ofCoupler,
    ...asked.rating,
    ...asked.placard,
  ]);
  if (isLeft(found)) return found;
  const { hitched } = asked;
  return right({
    ...found.right,
    ...(hitched && { hitched }),
    decisions: [...facts.right.decisions, ...found.right.decisions, ...(hitched?.decisions ?? [])],
  });
}
