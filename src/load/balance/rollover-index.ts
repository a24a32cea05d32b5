/** Width of the track compared with the height of the load. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  type Derived,
  inInches,
  type OutsideItsRange,
  over,
  result,
  type Source,
  times,
} from '../../trace/index.js';

const stability: Source = {
  id: 'static-stability-factor',
  title: 'static stability factor, half the track over the height of the centre, from memory',
  grade: 'memory',
};

/**
 * How wide is the track for the height of the centre of gravity?
 *
 * `index = (track / 2) / h`. An index to compare loads with: the higher, the harder to tip.
 *
 * Never a speed: springs, tires, a load that shifts and the way of driving are not in it. No figure is safe.
 *
 * @param track middle to middle of the tires (of the pair, when dual), by tape
 * @param height of the centre of trailer and load together above the ground
 * @returns a plain number; Left `OutsideItsRange`
 * @example rolloverIndex(inch(90), inch(45)) // Right 1
 * @source static stability factor, from memory
 */
export function rolloverIndex(track: AnyLength, height: AnyLength): Either<OutsideItsRange, Derived<'ratio'>> {
  const [t, h] = [inInches('track', track), inInches('height of the centre', height)];
  const guarded = allHold([aboveZero('the track', t), aboveZero('the height of the centre', h)]);
  return isLeft(guarded) ? guarded : right(result('static rollover index', over(t, times(2, h)), stability));
}
