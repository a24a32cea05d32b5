/** Height of an edge above the line through the wheels on both sides of it. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAngle,
  type AnyLength,
  aboveZero,
  allHold,
  cos,
  type Decision,
  type Derived,
  inDegrees,
  inInches,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  root,
  type Source,
  sin,
  tan,
  times,
} from '../../trace/index.js';
import { belowUpright } from './angle.js';

/** What the formulas of this page follow from. */
export const geometry: Source = Object.freeze({
  id: 'crest-geometry',
  title: 'plane geometry, derived',
  grade: 'derived',
});

/**
 * How high is an edge above the line through the wheels on both sides of it?
 *
 * `u v sin b / sqrt(u2 + v2 + 2 u v cos b)`; u and v along the surfaces from the edge to the front and rear wheels' feet,
 * b the angle the surface turns by. The plus sign is right: the angle inside the triangle is 180 degrees minus b.
 *
 * @param before from the edge to one axle, along its surface
 * @param behind from the edge to the other axle
 * @param turns 0 to below 90 degrees
 * @returns in. Left `OutsideItsRange`
 * @example orThrow(edgeRise(inch(30), inch(20), degree(20))).rise // 4.16 in
 * @source plane geometry, derived
 */
export function edgeRise(
  before: AnyLength,
  behind: AnyLength,
  turns: AnyAngle,
): Either<OutsideItsRange, { readonly rise: Derived<'in'>; readonly decisions: readonly Decision[] }> {
  const u = inInches('edge to the one axle', before);
  const v = inInches('edge to the other axle', behind);
  const angle = inDegrees('angle at the edge', turns);
  const guarded = allHold([
    aboveZero('edge to the one axle', u),
    aboveZero('edge to the other axle', v),
    notNegative('angle at the edge', angle),
    belowUpright('angle at the edge', angle),
  ]);
  if (isLeft(guarded)) return guarded;
  const line = result('line through the wheels', root(plus(times(u, u), times(v, v), times(2, u, v, cos(angle)))));
  return right({
    rise: result('rise of the edge', over(times(u, v, sin(angle)), line), geometry),
    decisions: guarded.right,
  });
}

/**
 * The rise of the edge when it is p behind the front axle and q ahead of the rear one, p + q = B: the h that makes
 * `arctan(h/p) + arctan(h/q) = b`, so `h = 2 p q tan b / (B + sqrt(B2 + 4 p q tan2 b))`.
 */
export function riseBelow(name: string, p: Derived<'in'>, base: Derived<'in'>, turns: Derived<'deg'>): Derived<'in'> {
  const q = minus(base, p);
  const slope = tan(turns);
  const straight = root(plus(times(base, base), times(4, p, q, times(slope, slope))));
  return result(name, over(times(2, p, q, slope), plus(base, straight)), geometry);
}
