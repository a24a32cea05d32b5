/** What one tire may carry at the pressure it is really run at: never more than its rating. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Decision, type Derived, decide, type Known, leastOf } from '../../trace/index.js';
import type { Designation } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { estimateLoadAtPressure } from './estimates.js';
import { inPsi } from './known-figures.js';
import { loadAtPressure } from './load-at-pressure.js';
import { type PressureStep, pressureSteps } from './pressure-steps.js';
import { asPrinted, ratedPressure } from './rated-pressure.js';
import type { Service, Tire, TireRating } from './tire.js';
import { inService, tireLoadRating } from './tire-load-rating.js';

export interface TireLoadAsRun {
  /** What the tire may carry at this pressure, in this service. */
  readonly load: Derived<'lb'>;
  readonly rating: TireRating;
  /** `rating` at the rated pressure or above, `table` from printed rows below it, `estimate` where none is printed. */
  readonly from: 'rating' | 'table' | 'estimate';
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const name = 'tire load at the pressure run';

/** Where rows are printed but none is for this pressure: that it lies below the first or above the last. */
function offTheRows(
  d: Designation,
  { fitment }: Service,
  table: string | undefined,
  run: Derived<'psi'>,
): readonly Decision[] {
  const printed = pressureSteps(d, fitment, table);
  if (isLeft(printed)) return [];
  const [first, last] = [printed.right.steps[0] as PressureStep, printed.right.steps.at(-1) as PressureStep];
  return [decide(run, '<', first.pressure), decide(run, '>', last.pressure)];
}

/**
 * What may this tire carry at the cold pressure it is run at?
 *
 * At or above the rated pressure: its rating; more pressure gives no more load. Below: the lesser of the rating and the printed
 * load at that pressure; where no row is printed, the lesser of the rating and the estimate by exponent, basis estimated.
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
  const decisions = [...rating.decisions, ...full.decisions, ...run.decisions, below];
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
  if (!isLeft(listed)) {
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
  const load = leastOf(name, [rating.rating, estimate.right.load]);
  const off = offTheRows(rating.designation, service, tire.table, run.pressure);
  return right({
    load,
    rating,
    from: 'estimate',
    notes: [...rating.notes, ...estimate.right.notes],
    decisions: [...decisions, ...off, ...estimate.right.decisions],
  });
}
