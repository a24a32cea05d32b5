/** The flat strip that a channel is bent from. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  type AnyShare,
  aboveZero,
  allHold,
  commonPractice,
  constant,
  type Derived,
  inInches,
  inShare,
  minus,
  notNegative,
  type OutsideItsRange,
  plus,
  result,
  times,
} from '../../trace/index.js';
import { ratio } from '../../units/index.js';

/** A channel of plate with two bends of a right angle; outside sizes, by drawing. */
export interface BentChannel {
  /** Web, outside to outside. */
  readonly web: AnyLength;
  /** Each flange, outside. */
  readonly flange: AnyLength;
  /** Thickness of the plate. */
  readonly thickness: AnyLength;
  /** Radius inside the bends. */
  readonly insideRadius: AnyLength;
  /** Where the plate keeps its length, as a share of the thickness from inside: the bending shop's own figure. */
  readonly neutral: AnyShare;
}

const halfPi = constant(ratio('1.570796326794896619231321691639751'), 'quarter turn');

/**
 * How wide is the flat strip that this channel is bent from?
 *
 * `blank = (web - 2 (r + t)) + 2 (flange - (r + t)) + 2 (pi / 2) (r + k t)`; the flats, and two quarter turns along the neutral line.
 *
 * Not for other angles. The share k is the bending shop's: 0.33 to 0.5 are met with; try one strip.
 *
 * @param channel outside sizes, thickness, inside radius, k
 * @returns in; Left `OutsideItsRange`, also for a flange or web that the bends use up
 * @example blankWidth({ web: inch(8), flange: inch(3), thickness: inch('0.25'), insideRadius: inch('0.25'), neutral: ratio('0.4') }) // Right 13.1 in
 * @source plane geometry, derived; k is common practice, no source
 */
export function blankWidth(channel: BentChannel): Either<OutsideItsRange, Derived<'in'>> {
  const [web, flange] = [inInches('web', channel.web), inInches('flange', channel.flange)];
  const [t, r] = [inInches('thickness', channel.thickness), inInches('inside radius', channel.insideRadius)];
  const k = inShare('neutral line', channel.neutral);
  const outside = plus(r, t);
  const flatWeb = result('flat of the web', minus(web, times(2, outside)));
  const flatFlange = result('flat of a flange', minus(flange, outside));
  const guarded = allHold([
    aboveZero('the thickness', t),
    notNegative('the inside radius', r),
    notNegative('the neutral line', k),
    notNegative('the flat of the web', flatWeb),
    notNegative('the flat of a flange', flatFlange),
  ]);
  if (isLeft(guarded)) return guarded;
  const bend = result('length of a bend', times(halfPi, plus(r, times(k, t))), commonPractice);
  return right(result('width of the blank', plus(flatWeb, times(2, flatFlange), times(2, bend))));
}
