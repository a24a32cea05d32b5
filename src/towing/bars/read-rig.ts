/** The rig that spring bars act on: its figures read and guarded, and the lever of its ball. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, inInches, inPounds } from '../../trace/index.js';
import { toWire } from '../../units/index.js';
import type { TowingError } from '../errors.js';
import { allAboveZero, noneBelowZero, noneOf } from '../figures.js';
import { hitchLever } from '../hitch/hitch-lever.js';

import type { WeightDistributionQuestion } from './bars-answer.js';

type Place = Extract<ReturnType<typeof hitchLever>, { readonly _tag: 'Right' }>['right'];

/** Symbols of the formulas: a ball to trailer axles, o rear axle to ball, b wheelbase, in. */
export interface RigRead {
  readonly front: Derived<'lb'>;
  readonly rear: Derived<'lb'>;
  readonly tongue: Derived<'lb'>;
  readonly gross: Derived<'lb'>;
  readonly b: Derived<'in'>;
  readonly o: Derived<'in'>;
  readonly a: Derived<'in'>;
  readonly place: Place;
  readonly decisions: readonly Decision[];
}

/** Reads the figures of the rig; refuses an impossible geometry. */
export function readRig(question: WeightDistributionQuestion): Either<TowingError, RigRead> {
  const [front, rear, tongue, gross] = [
    inPounds('front axle, truck alone', question.front),
    inPounds('rear axle, truck alone', question.rear),
    inPounds('tongue load', question.tongue),
    inPounds('gross weight', question.gross),
  ];
  const [b, o, a] = [
    inInches('wheelbase', question.wheelbase),
    inInches('overhang', question.overhang),
    inInches('ball to trailer axles', question.axlesAt),
  ];
  const above = allAboveZero([
    ['wheelbase', b],
    ['ball to trailer axles', a],
    ['gross weight', gross],
  ]);
  if (isLeft(above)) return above;
  const weighed = noneBelowZero([
    ['front axle, truck alone', front],
    ['rear axle, truck alone', rear],
  ]);
  if (isLeft(weighed)) return weighed;
  const behind = decide(o, '>=', noneOf('in'));
  if (!behind.holds) return left({ chapter: 'towing', tag: 'BarsNeedBallBehind', overhang: toWire(o.value) });
  const possible = decide(tongue, '<=', gross);
  if (!possible.holds)
    return left({
      chapter: 'towing',
      tag: 'TongueAboveGross',
      tongue: toWire(tongue.value),
      gross: toWire(gross.value),
    });
  const place = hitchLever({ hitch: 'ball behind', overhang: o, wheelbase: b });
  if (isLeft(place)) return place;
  return right({
    front,
    rear,
    tongue,
    gross,
    b,
    o,
    a,
    place: place.right,
    decisions: [...above.right, ...weighed.right, behind, possible, ...place.right.decisions],
  });
}
