/** What one tire may carry at the pressure it is really run at: never more than its rating. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Decision, type Derived, decide, greatestOf, type Known, leastOf } from '../../trace/index.js';
import type { TiresError } from '../errors.js';
import { estimateLoadAtPressure } from './estimates.js';
import { inPsi } from './known-figures.js';
import { loadAtPressure } from './load-at-pressure.js';
import type { PressureStep } from './pressure-steps.js';
import { againstRows } from './printed-for-another.js';
import { asPrinted, ratedPressure } from './rated-pressure.js';
import type { Service, Tire, TireRating } from './tire.js';
import { inService, tireLoadRating } from './tire-load-rating.js';

export interface TireLoadAsRun {
  /** What the tire may carry at this pressure, in this service. */
  readonly load: Derived<'lb'>;
  readonly rating: TireRating;
  /** `rating` at the rated pressure or above, `table` from printed rows below it, `estimate` where none is printed or the rows end below the rated pressure. */
  readonly from: 'rating' | 'table' | 'estimate';
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const name = 'tire load at the pressure run';

/** Where rows are printed but none is for this pressure: that it lies below the first or above the last. */
function offTheRows(
  steps: readonly PressureStep[],
  run: Derived<'psi'>,
): { readonly isAbove: boolean; readonly decisions: readonly Decision[] } {
  const [first, last] = [steps[0], steps.at(-1)];
  if (first === undefined || last === undefined) return { isAbove: false, decisions: [] };
  const above = decide(run, '>', last.pressure);
  return { isAbove: above.holds, decisions: [decide(run, '<', first.pressure), above] };
}

/**
 * What may this tire carry at the cold pressure it is run at?
 *
 * At or above the rated pressure: its rating; more pressure gives no more load. Below: the lesser of the rating and the printed
 * load at that pressure; where no row is printed, the lesser of the rating and the estimate by exponent, basis estimated. Above the
 * last row a tire carries at least what that row says. A row that gives the whole rating below the rated pressure is of a
 * stronger tire: then the lesser of row and estimate.
 *
 * The rated pressure is the molded one, else that of the load range. Without either there is no answer.
 *
 * @param tire designation and molded figures, read from the sidewall
 * @param service single or dual wheels, and the kind of vehicle
 * @param pressure cold, in psi or kPa, from a gauge
 * @returns lb a tire, and where it comes from; Left as `tireLoadRating`, `rangePressure`
 * @example tireLoadAsRun({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' }, psi(50)) // Right: 2,150 lb
 * @source as `tireLoadRating`, `loadAtPressure` and `estimateLoadAtPressure`
 */
export function tireLoadAsRun(
  tire: Tire,
  service: Service,
  pressure: Known<'psi' | 'kPa'>,
): Either<TiresError, TireLoadAsRun> {
  const carries = tireLoadRating(tire, service);
  if (isLeft(carries)) return carries;
  const rating = carries.right;
  const cold = inPsi('cold pressure', pressure);
  if (isLeft(cold)) return cold;
  const rated = ratedPressure(tire, rating.designation);
  if (isLeft(rated)) return rated;
  const [run, full] = [asPrinted(rating.designation, cold.right), rated.right];
  const below = decide(run.pressure, '<', full.pressure);
  const decisions: Decision[] = [...rating.decisions, ...full.decisions, ...run.decisions, below];
  if (!below.holds) {
    const above = decide(run.pressure, '>', full.pressure);
    const more = above.holds
      ? [
          note(
            'PressureAboveRated',
            'run above the rated pressure: no more load for it, and the molded pressure is the limit',
            [run.pressure, full.pressure],
          ),
        ]
      : [];
    return right({
      load: rating.rating,
      rating,
      from: 'rating',
      notes: [...rating.notes, ...more],
      decisions: [...decisions, above],
    });
  }
  const listed = loadAtPressure(
    rating.designation,
    run.pressure,
    service.fitment,
    tire.table === undefined ? {} : { table: tire.table },
  );
  const rows = againstRows(rating, full.pressure);
  decisions.push(...rows.decisions);
  if (!isLeft(listed) && !rows.areOfAStrongerTire) {
    const load = leastOf(name, [rating.rating, inService(rating.designation, service, listed.right.load)]);
    return right({
      load,
      rating,
      from: 'table',
      notes: [...rating.notes, ...listed.right.notes],
      decisions: [...decisions, ...listed.right.decisions],
    });
  }
  const estimate = estimateLoadAtPressure(
    rating.designation,
    { load: rating.rating, pressure: full.pressure },
    run.pressure,
  );
  if (isLeft(estimate)) return estimate;
  const off = offTheRows(rows.steps, run.pressure);
  const carried = (step: Derived<'lb'>): Derived<'lb'> => inService(rating.designation, service, step);
  const last = off.isAbove && !rows.areOfAStrongerTire ? rows.steps.at(-1) : undefined;
  const claimed =
    last === undefined
      ? estimate.right.load
      : greatestOf('estimate or last printed row', [estimate.right.load, carried(last.load)]);
  return right({
    load: leastOf(name, [rating.rating, claimed, ...(isLeft(listed) ? [] : [carried(listed.right.load)])]),
    rating,
    from: 'estimate',
    notes: [...rating.notes, ...estimate.right.notes],
    decisions: [
      ...decisions,
      ...off.decisions,
      ...(isLeft(listed) ? [] : listed.right.decisions),
      ...estimate.right.decisions,
    ],
  });
}
