/** An estimate between two printed rows, given with the safe answer of the lower row. Never a rating. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type Decision,
  type Derived,
  given,
  type Known,
  minus,
  over,
  plus,
  result,
  roundedDown,
  times,
} from '../../trace/index.js';
import { lb, ratio } from '../../units/index.js';
import { designationOf } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { inPsi } from './known-figures.js';
import { type LoadAtPressure, loadAtPressure } from './load-at-pressure.js';
import { pressureSteps } from './pressure-steps.js';
import type { TableChoice } from './printed-steps.js';
import type { Fitment } from './published-rows.js';

export interface LoadBetweenRows {
  /** The printed load of the row at or below the pressure: the one that counts. */
  readonly safe: LoadAtPressure;
  /** The estimate, basis estimated. At a printed pressure, or where no higher row is printed, the safe load. */
  readonly estimate: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const betweenNote = note(
  'EstimateBetweenRows',
  'an estimate on a straight line between two printed rows; it is no rating, and the row below it is what counts',
);

/**
 * About what may a tire carry at a pressure between two printed rows?
 *
 * `L = L1 + k (L2 - L1) (p - p1) / (p2 - p1)`, rounded down to 1 lb: p the cold pressure, p1 and p2 the printed pressures below
 * and above it, L1 and L2 their loads, k = 1 the assumption of a straight line.
 *
 * It is given with the safe answer of `loadAtPressure` and never enters a rating: no source allows a load between rows. Printed
 * loads rise ever more slowly with pressure, so a straight line claims no more than a smooth curve through the rows; rows are
 * rounded to 5 or 10 lb and lie on no curve. Nothing outside the printed rows.
 *
 * @param designation size with load range, from the sidewall
 * @param pressure cold, in psi or kPa
 * @param fitment single, or dual for twin wheels on one hub: lb a tire
 * @returns lb; Left as `loadAtPressure`
 * @example estimateBetweenRows('ST225/75R15 LRD', psi(62), 'single') // Right: 2,444 lb beside 2,380 lb, the row of 60 psi
 * @source straight line between printed rows, our own; rows as `loadAtPressure`
 */
export function estimateBetweenRows(
  designation: string | Designation,
  pressure: Known<'psi' | 'kPa'>,
  fitment: Fitment,
  choice: TableChoice = {},
): Either<TiresError, LoadBetweenRows> {
  const safe = loadAtPressure(designation, pressure, fitment, choice);
  if (isLeft(safe)) return safe;
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const found = pressureSteps(read.right, fitment, choice.table);
  if (isLeft(found)) return found;
  const asked = inPsi('cold pressure', pressure);
  if (isLeft(asked)) return asked;
  const { steps } = found.right;
  const below = steps.findIndex((step) => step.pressure === safe.right.row);
  const next = steps[below + 1];
  const notes = [betweenNote, ...safe.right.notes];
  const { load, row, decisions } = safe.right;
  if (next === undefined) return right({ safe: safe.right, estimate: load, notes, decisions });
  const straight = given('straight line between the rows', ratio(1), 'estimated');
  const share = result('share of the way', over(minus(asked.right, row), minus(next.pressure, row)));
  const line = plus(load, times(minus(next.load, load), share, straight));
  return right({
    safe: safe.right,
    estimate: roundedDown('estimated load between rows', line, lb(1)),
    notes,
    decisions,
  });
}
