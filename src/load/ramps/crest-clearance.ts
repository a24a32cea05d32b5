/** Does a wheeled machine hang up where the ramp meets the deck? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  aboveZero,
  allHold,
  arctan,
  between,
  constant,
  type Decision,
  type Derived,
  decide,
  inInches,
  leastOf,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { NothingGiven } from '../errors.js';
import { belowUpright } from './angle.js';
import { geometry, riseBelow } from './edge-rise.js';

/** A point under the machine that may touch: where it hangs between the axles and how high above the tires' feet. */
export interface LowPoint {
  readonly name: string;
  readonly behindFrontAxle: AnyLength;
  readonly height: AnyLength;
}

/** An edge the machine drives over, and how far the surface turns there. */
export interface Crest {
  readonly name: string;
  readonly turns: Derived<'deg'>;
}

/** One low point over one edge. */
export interface CrestCheck {
  readonly crest: string;
  readonly lowPoint: string;
  /** Height of the edge above the line through the tires' feet as it passes below the low point. */
  readonly rise: Derived<'in'>;
  /** Height of the low point minus that rise. Zero touches. */
  readonly clearance: Derived<'in'>;
  readonly verdict: 'clears' | 'touches';
}

/** Every low point over every edge, and the least clearance. */
export interface CrestClearance {
  readonly checks: readonly CrestCheck[];
  readonly least: Derived<'in'>;
  /** The sharpest single edge this machine just touches on. */
  readonly sharpest: Derived<'deg'>;
  readonly verdict: 'clears' | 'touches';
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * Does this machine clear every edge on the way up?
 *
 * For a low point c high, p behind the front axle of a wheelbase B: the edge rises
 * `h = 2 p q tan b / (B + sqrt(B2 + 4 p q tan2 b))` at that point, q = B - p, b the turn of the surface; clearance c - h.
 * The sharpest edge it touches on is `arctan(c/p) + arctan(c/q)`, which is `2 arctan(2 c / B)` in the middle.
 *
 * Wheeled machines with both axles on firm surfaces; a tracked machine pivots over the edge instead. A flat belly is
 * worst in the middle of the wheelbase: give that point. Tire deflection is ignored. Zero clearance touches.
 *
 * @param wheelbase in
 * @param lowPoints at least one; height above the plane of the tires' feet
 * @param crests from `crestsOf`, or any edges with their angles
 * @returns Left `NothingGiven`, `OutsideItsRange`; a machine that touches is an answer
 * @example orThrow(crestClearance(inch(100), [{ name: 'belly', behindFrontAxle: inch(50), height: inch(12) }], crests)).sharpest // 26.99 deg
 * @source plane geometry, derived; the formula for the middle: encyclopedia, reproduced
 */
export function crestClearance(
  wheelbase: AnyLength,
  lowPoints: readonly LowPoint[],
  crests: readonly Crest[],
): Either<NothingGiven | OutsideItsRange, CrestClearance> {
  if (lowPoints.length === 0)
    return left({ chapter: 'load', tag: 'NothingGiven', what: 'low points under the machine' });
  if (crests.length === 0) return left({ chapter: 'load', tag: 'NothingGiven', what: 'edges to drive over' });
  const base = inInches('wheelbase', wheelbase);
  const points = lowPoints.map(({ name, behindFrontAxle, height }) => ({
    name,
    p: inInches(`${name} behind the front axle`, behindFrontAxle),
    c: inInches(`${name} height`, height),
  }));
  const guarded = allHold([
    aboveZero('wheelbase', base),
    ...collected(points, ({ name, p, c }) => [
      ...between(`${name} behind the front axle`, p, constant(inch(0)), base, 'excluded'),
      notNegative(`${name} height`, c),
    ]),
    ...collected(crests, ({ name, turns }) => [notNegative(name, turns), belowUpright(name, turns)]),
  ]);
  if (isLeft(guarded)) return guarded;
  const decisions = [...guarded.right];
  const checks = collected(crests, (crest) =>
    points.map((point): CrestCheck => {
      const rise = riseBelow(`rise of ${crest.name} at ${point.name}`, point.p, base, crest.turns);
      const clearance = result(`clearance of ${point.name} over ${crest.name}`, minus(point.c, rise));
      const clears = decide(point.c, '>', rise);
      decisions.push(clears);
      return {
        crest: crest.name,
        lowPoint: point.name,
        rise,
        clearance,
        verdict: clears.holds ? 'clears' : 'touches',
      };
    }),
  );
  const sharpest = leastOf(
    'sharpest edge',
    points.map(({ name, p, c }) =>
      result(`sharpest edge for ${name}`, plus(arctan(over(c, p)), arctan(over(c, minus(base, p)))), geometry),
    ),
  );
  const touching = checks.filter(({ verdict }) => verdict === 'touches');
  return right({
    checks,
    sharpest,
    least: leastOf(
      'least clearance',
      checks.map(({ clearance }) => clearance),
    ),
    verdict: touching.length === 0 ? 'clears' : 'touches',
    decisions,
    notes: touching.map(({ crest, lowPoint, clearance }) =>
      note('HangsUp', `${lowPoint} touches at ${crest}.`, [clearance]),
    ),
  });
}
