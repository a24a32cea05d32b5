/** What cold pressure one tire needs: a printed step below its rated pressure, or the rated pressure itself. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, type Known, product } from '../../trace/index.js';
import { lb, roundCapacityDown, roundLoadUp, show } from '../../units/index.js';
import type { TiresError } from '../errors.js';
import { inPounds } from './known-figures.js';
import type { PressureForLoad } from './pressure-for-load.js';
import { againstRows } from './printed-for-another.js';
import { printedTables } from './printed-steps.js';
import { ratedPressure } from './rated-pressure.js';
import type { TireRating } from './tire.js';
import { inService, isDivided, passengerDivisor } from './tire-load-rating.js';

/**
 * What cold pressure does this tire need for this load?
 *
 * The lowest printed pressure below the rated one whose load is not below the load asked for; else the rated pressure, which
 * carries the rating. Never above the rated pressure, whatever a table prints for stronger tires of the size. A passenger tire
 * on a trailer needs the pressure of 1.10 times the load.
 *
 * The least that printed rows allow, not a setting: the placard of the vehicle says what the tires run at.
 *
 * @param rated from `tireLoadRating`: the tire as read from its sidewall, and its service
 * @param load on one tire, in lb or kg: the heaviest on one of them
 * @returns psi and what the tire carries at it, in lb; Left `LoadAboveRating` when no pressure serves, else `NotPositive`, `LoadRangeNeeded` or as
 * `rangePressure` where the pressure of the rating is unknown
 * @example tirePressureForLoad(orThrow(tireLoadRating({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' })), lb(2400)) // Right: 65 psi
 * @source as `tireLoadRating` and `pressureForLoad`
 */
export function tirePressureForLoad(rated: TireRating, load: Known<'lb' | 'kg'>): Either<TiresError, PressureForLoad> {
  const { tire, service, designation: d, rating, notes, decisions: read } = rated;
  const asked = inPounds('tire load', load);
  if (isLeft(asked)) return asked;
  const borne = decide(asked.right, '<=', rating);
  if (!borne.holds)
    return left({
      chapter: 'tires',
      tag: 'LoadAboveRating',
      load: show(roundLoadUp(asked.right.value, lb(1))),
      rating: show(roundCapacityDown(rating.value, lb(1))),
    });
  const full = ratedPressure(tire, d);
  if (isLeft(full)) return full;

  const counted: Derived<'lb'> = isDivided(d, service)
    ? product('tire load, as a passenger tire counts it', asked.right, passengerDivisor)
    : asked.right;
  const rows = againstRows(rated, full.right.pressure);
  const decisions: Decision[] = [...read, borne, ...full.right.decisions, ...rows.decisions];
  for (const step of rows.areOfAStrongerTire ? [] : rows.steps) {
    const below = decide(step.pressure, '<', full.right.pressure);
    decisions.push(below);
    if (!below.holds) break;
    const serves = decide(counted, '<=', step.load);
    decisions.push(serves);
    if (serves.holds)
      return right({
        pressure: step.pressure,
        carries: inService(d, service, step.load),
        tables: printedTables(step),
        notes,
        decisions,
      });
  }
  return right({ pressure: full.right.pressure, carries: rating, tables: [], notes, decisions });
}
