/** What the brakes of a combination must do by the published table. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  aboveZero,
  allHold,
  asDerived,
  asForce,
  constant,
  type Decision,
  type Derived,
  decide,
  fromTable,
  inPounds,
  inUnit,
  type Known,
  minus,
  type OutsideItsRange,
  over,
  result,
  times,
} from '../../trace/index.js';
import { foot, lb, quantity, ratio, type UnitOf } from '../../units/index.js';
import { frozen } from '../../units/internal.js';
import { type BrakePerformanceRow, brakePerformance } from '../data/brake-performance.js';

/** A towing vehicle with its trailer, as far as the table asks. */
export interface BrakedCombination {
  /** Axles of the towing vehicle. */
  readonly towAxles: number;
  /** GVWR of the trailer, by its label. */
  readonly trailerGvwr: AnyWeight;
  /** Both together as they roll, lb. */
  readonly weight: AnyWeight;
}

/** The row that fits, and what it asks of this weight. */
export interface BrakingAsked {
  readonly row: BrakePerformanceRow;
  /** Braking force at the road, all wheels together. */
  readonly force: Derived<'lbf'>;
  readonly deceleration: Derived<'ft/s2'>;
  /** Application and braking distance from 20 mph with the service brakes. */
  readonly distance: Derived<'ft'>;
  readonly decisions: readonly Decision[];
}

const lightTrailer = constant(lb(3000), 'light trailer');
const hundred = 100;
const { rows } = frozen(brakePerformance);

/**
 * What must the brakes of this combination do by 49 CFR 393.52(d)?
 *
 * `F = p W / 100`; p percent of the row, W the weight of both together. A two-axle vehicle with a trailer of 3,000 lb GVWR or less
 * has a row of its own (35 ft from 20 mph); every other combination has 40 ft. Both ask 43.5 % and 14 ft/s2.
 *
 * Binds commercial vehicles, on a dry hard level surface, from 20 mph. Not for driveaway operations, nor for emergency brakes.
 *
 * @param combination axles of the towing vehicle, GVWR of the trailer, weight of both, lb
 * @returns the row, force in lbf, deceleration, distance in ft; Left `OutsideItsRange`
 * @example orThrow(brakingAsked({ towAxles: 2, trailerGvwr: lb(14000), weight: lb(20000) })).force // 8,700 lbf
 * @source 49 CFR 393.52(d), table, from memory (verify)
 */
export function brakingAsked(combination: BrakedCombination): Either<OutsideItsRange, BrakingAsked> {
  const axles = constant(ratio(combination.towAxles), 'axles of the towing vehicle');
  const gvwr = inPounds('trailer GVWR', combination.trailerGvwr);
  const weight = inPounds('combined weight', combination.weight);
  const guarded = allHold([
    aboveZero('axles of the towing vehicle', axles),
    aboveZero('trailer GVWR', gvwr),
    aboveZero('combined weight', weight),
  ]);
  if (isLeft(guarded)) return guarded;
  const twoAxles = decide(axles, '<=', constant(ratio(2)));
  const light = decide(gvwr, '<=', lightTrailer);
  const [, small, any] = rows;
  const row = twoAxles.holds && light.holds ? small : any;
  const from = { table: brakePerformance.name, key: row.clause, source: brakePerformance.source };
  const percent = fromTable('braking force in percent', ratio(row.forcePercent), from);
  return right({
    row,
    force: result('braking force asked', over(times(percent, asForce(weight)), hundred), brakePerformance.source),
    deceleration: fromTable('deceleration asked', quantity(row.deceleration, 'ft/s2'), from),
    distance: fromTable('stopping distance from 20 mph', foot(row.serviceFt), from),
    decisions: [...guarded.right, twoAxles, light],
  });
}

/** Braking force against what is asked. */
export interface BrakingCheck extends BrakingAsked {
  /** Force there is less force asked; below zero is short. */
  readonly reserve: Derived<'lbf'>;
  /** Within at an exact tie. */
  readonly verdict: 'within' | 'short';
}

/**
 * Does the braking force of this combination reach what 49 CFR 393.52(d) asks?
 *
 * `reserve = F there - p W / 100`.
 *
 * The force is measured on a brake tester, hitched and loaded; no label prints it.
 *
 * @param force at the road, all wheels of both together
 * @param combination as for `brakingAsked`
 * @returns lbf; Left `OutsideItsRange`
 * @example orThrow(brakingCheck(lbf(9000), { towAxles: 2, trailerGvwr: lb(14000), weight: lb(20000) })).reserve // 300 lbf
 * @source 49 CFR 393.52(d), table, from memory (verify)
 */
export function brakingCheck(
  force: Known<UnitOf<'force'>>,
  combination: BrakedCombination,
): Either<OutsideItsRange, BrakingCheck> {
  const there = inUnit(asDerived('braking force', force), 'lbf');
  const asked = brakingAsked(combination);
  if (isLeft(asked)) return asked;
  const guarded = allHold([aboveZero('braking force', there)]);
  if (isLeft(guarded)) return guarded;
  const reaches = decide(there, '>=', asked.right.force);
  return right({
    ...asked.right,
    reserve: result('braking force in reserve', minus(there, asked.right.force)),
    verdict: reaches.holds ? 'within' : 'short',
    decisions: [...asked.right.decisions, ...guarded.right, reaches],
  });
}
