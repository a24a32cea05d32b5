/** Loads of the truck's axles when the trailer is on the ball. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  type Decision,
  type Derived,
  decide,
  difference,
  inPounds,
  statics,
  sum,
} from '../../trace/index.js';
import type { TowingError } from '../errors.js';
import { noneBelowZero, noneOf } from '../figures.js';
import { type HitchPlace, hitchLever, type Lever, takenOffFront } from '../hitch/hitch-lever.js';

/** The tow vehicle as weighed alone, the place of its ball, and the tongue load on it. */
export type HitchedQuestion = HitchPlace & {
  readonly front: AnyWeight;
  readonly rear: AnyWeight;
  readonly tongue: AnyWeight;
};

/** The tow vehicle's axles as hitched, no spring bars working. */
export interface HitchedAxleLoads {
  readonly front: Derived<'lb'>;
  readonly rear: Derived<'lb'>;
  /** What the tongue takes off the front axle; negative when it adds, as a gooseneck does. */
  readonly offFront: Derived<'lb'>;
  /** What the tongue puts on the rear axle: the tongue load and what left the front axle. */
  readonly ontoRear: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const frontLifts = (front: Derived<'lb'>): Note =>
  note('FrontAxleLifts', 'By this arithmetic the front wheels leave the ground.', [front]);

/** A tongue that pulls up, or that carries more than the whole trailer, is an answer, with a note. */
export function tongueRemark(
  tongue: Derived<'lb'>,
  gross?: Derived<'lb'>,
): Pick<HitchedAxleLoads, 'notes' | 'decisions'> {
  const pullsUp = decide(tongue, '<', noneOf('lb'));
  const tips = gross && decide(tongue, '>', gross);
  const notes = [
    ...(pullsUp.holds
      ? [
          note(
            'NegativeTongue',
            'The tongue pulls up on the ball: the trailer is loaded tail-heavy, the rear axle gets lighter, and such a trailer is not stable.',
            [tongue],
          ),
        ]
      : []),
    ...(gross && tips?.holds
      ? [
          note(
            'TongueAboveGross',
            'The tongue load is above the gross weight: the trailer tips over its ball and its axles lift, or a figure is wrong.',
            [tongue, gross],
          ),
        ]
      : []),
  ];
  return { notes, decisions: [pullsUp, ...(tips === undefined ? [] : [tips])] };
}

/** The axles with a load on the ball, by a lever that was read already; `as` names them in the working. */
export function hitchedBy(
  lever: Lever,
  front: Derived<'lb'>,
  rear: Derived<'lb'>,
  onBall: Derived<'lb'>,
  as = 'hitched',
): HitchedAxleLoads {
  const how = as === 'hitched' ? '' : `, ${as}`;
  const offFront = takenOffFront(`taken off the front axle${how}`, lever, onBall);
  const ontoRear = sum(`put on the rear axle${how}`, [onBall, offFront]);
  const hitched = {
    front: difference(`front axle, ${as}`, front, offFront, statics),
    rear: sum(`rear axle, ${as}`, [rear, ontoRear], statics),
  };
  const lifts = decide(hitched.front, '<', noneOf('lb'));
  return { offFront, ontoRear, notes: lifts.holds ? [frontLifts(hitched.front)] : [], decisions: [lifts], ...hitched };
}

/**
 * What do the tow vehicle's axles carry with the trailer on the ball?
 *
 * `off the front = T o / b`, `onto the rear = T + T o / b`. T tongue load, lb; o rear axle to ball, in, positive behind the
 * axle, negative ahead of it; b wheelbase, in. Front and rear as hitched are the scaled axles less and plus these.
 * With the overhang `'unknown'` the bound o / b = 0.5 is taken as an estimate, and a note says so.
 *
 * Not for spring bars at work (see `weightDistribution`) nor for a tow vehicle with more than two axles.
 *
 * @param question front and rear: any unit of weight, the truck alone on a scale, people and cargo aboard. tongue: on the
 * ball, as scaled or computed. wheelbase: axle centre to axle centre. overhang: rear axle centre to ball centre.
 * @returns loads in lb, with notes. Left `NotAboveZero` (wheelbase), `BelowZero` (an axle), `HitchContradicts` (overhang of
 * the wrong sign for the hitch). A negative tongue is an answer with a note.
 * @example hitchedAxleLoads({ hitch: 'ball behind', front: lb(4300), rear: lb(3100), wheelbase: inch(160), overhang: inch(52), tongue: lb(1400) }) // Right front 3,845 lb, rear 4,955 lb
 * @source static equilibrium, derived; the bound: vehicle owner manuals, trailer worked example, 2008-2010
 */
export function hitchedAxleLoads(question: HitchedQuestion): Either<TowingError, HitchedAxleLoads> {
  const front = inPounds('front axle, truck alone', question.front);
  const rear = inPounds('rear axle, truck alone', question.rear);
  const weighed = noneBelowZero([
    ['front axle, truck alone', front],
    ['rear axle, truck alone', rear],
  ]);
  if (isLeft(weighed)) return weighed;
  const place = hitchLever(question);
  if (isLeft(place)) return place;
  const tongue = inPounds('tongue load', question.tongue);
  const remark = tongueRemark(tongue);
  const hitched = hitchedBy(place.right.lever, front, rear, tongue);
  return right({
    ...hitched,
    notes: [...place.right.notes, ...remark.notes, ...hitched.notes],
    decisions: [...weighed.right, ...place.right.decisions, ...remark.decisions, ...hitched.decisions],
  });
}
