/** Which edges does a machine drive over between ramp and deck, and how sharp is each? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyAngle,
  type AnyLength,
  aboveZero,
  allHold,
  between,
  type Decision,
  decide,
  inDegrees,
  inInches,
  minus,
  notNegative,
  type OutsideItsRange,
  result,
} from '../../trace/index.js';
import { belowUpright, flat } from './angle.js';
import type { Crest } from './crest-clearance.js';

/** A dovetail: how far it falls from the deck, and how long it is along its surface. */
export interface Dovetail {
  readonly angle: AnyAngle;
  readonly length: AnyLength;
}

/** The edges between ramp and deck. */
export interface Crests {
  readonly crests: readonly Crest[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Which edges does the machine drive over, and how far does each turn?
 *
 * Straight deck: one edge, the ramp angle. Dovetail: deck to dovetail turns by the dovetail angle, dovetail to ramp by the
 * ramp angle minus that. A wheelbase longer than the dovetail straddles both edges at once; then the edge that deck and
 * ramp would make without the dovetail is added, with the whole ramp angle: it lies above both, so it is on the safe side.
 *
 * @param ramp angle of the ramp from level, deck level
 * @param dovetail angle and length, or `'straight deck'`
 * @param wheelbase of the machine
 * @returns Left `OutsideItsRange`, also for a dovetail steeper than the ramp
 * @example orThrow(crestsOf(degree(20), { angle: degree(8), length: inch(60) }, inch(50))).crests.length // 2
 * @source plane geometry, derived
 */
export function crestsOf(
  ramp: AnyAngle,
  dovetail: Dovetail | 'straight deck',
  wheelbase: AnyLength,
): Either<OutsideItsRange, Crests> {
  const whole = inDegrees('ramp angle', ramp);
  const guarded = allHold([notNegative('ramp angle', whole), belowUpright('ramp angle', whole)]);
  if (isLeft(guarded)) return guarded;
  if (dovetail === 'straight deck')
    return right({ crests: [{ name: 'deck edge', turns: whole }], decisions: guarded.right, notes: [] });
  const tail = inDegrees('dovetail angle', dovetail.angle);
  const length = inInches('dovetail length', dovetail.length);
  const base = inInches('wheelbase', wheelbase);
  const tailGuarded = allHold([
    ...between('dovetail angle', tail, flat, whole, 'included'),
    aboveZero('dovetail length', length),
    aboveZero('wheelbase', base),
  ]);
  if (isLeft(tailGuarded)) return tailGuarded;
  const straddles = decide(base, '>', length);
  const crests: Crest[] = [
    { name: 'deck to dovetail', turns: tail },
    { name: 'dovetail to ramp', turns: result('turn from dovetail to ramp', minus(whole, tail)) },
  ];
  if (straddles.holds) crests.push({ name: 'both edges at once', turns: whole });
  return right({
    crests,
    decisions: [...guarded.right, ...tailGuarded.right, straddles],
    notes: straddles.holds
      ? [
          note(
            'StraddlesDovetail',
            'The wheelbase is longer than the dovetail: both edges are taken together as the sharper edge they replace.',
            [base, length],
          ),
        ]
      : [],
  });
}
