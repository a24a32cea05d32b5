/** The tires of an axle: what each may carry by its rating, what at the pressure it runs, what pressure its load needs. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { describeError } from '../errors.js';
import { note, type Note } from '../ratings/index.js';
import { isPassenger, loadAtPressure, pressureForLoad, type PressureForLoad, passengerDivisor, tireLoadRating, type TireRating, type TiresError } from '../tires/index.js';
import { converted, type Decision, decide, type Derived, leastOf, named, quotient } from '../trace/index.js';
import type { TireSpec } from './codec.js';
import type { NotChecked } from './not-checked.js';

export interface AxleTires {
  readonly of: string;
  readonly spec: TireSpec;
  /** What one tire may carry at its rating; absent when no source says. */
  readonly rating?: TireRating;
  /** What one tire may carry at the pressure it runs: never more than its rating. */
  readonly asRun?: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

/** What a designation cannot be read for is an error of the spec; what no table has only narrows the answer. */
const isUnreadable = (error: TiresError): boolean => error.tag === 'UnreadableDesignation' || error.tag === 'DualAboveSingle' || error.tag === 'NotPositive';

type Run = Pick<AxleTires, 'asRun' | 'notes' | 'notChecked' | 'decisions'>;

/** Where the molded load holds at a molded pressure: the two pressures, to be compared. */
function moldedPressure(of: string, spec: TireSpec, rating: TireRating): Derived<'psi'> | undefined {
  const molded = spec.molded?.pressure;
  return molded === undefined || rating.from !== 'molded' ? undefined : converted(`${of} molded pressure`, named(`${of} molded pressure`, molded) as Derived<'psi'>, 'psi');
}

/** At the molded pressure the molded load holds; above it the tire is over-inflated, which raises nothing and is said. Below it the printed rows speak. */
function atPressure(of: string, spec: TireSpec, rating: TireRating): Run {
  if (spec.pressure === undefined) return { notes: [], notChecked: [{ what: `${of} tires at the pressure they run`, missing: 'cold pressure as run' }], decisions: [] };
  const pressure = converted(`${of} cold pressure`, named(`${of} cold pressure`, spec.pressure) as Derived<'psi'>, 'psi');
  const molded = moldedPressure(of, spec, rating);
  const compared = molded === undefined ? [] : [decide(pressure, '>=', molded), decide(pressure, '>', molded)];
  const [reached, above] = compared;
  if (reached?.holds === true) {
    const notes = above?.holds === true ? [note('PressureAboveMolded', 'the tires run above the pressure molded on them; that raises no rating', [pressure])] : [];
    return { asRun: rating.rating, notes, notChecked: [], decisions: compared };
  }
  const found = loadAtPressure(rating.designation, pressure, spec.fitment);
  if (isLeft(found)) return { notes: [], notChecked: [{ what: `${of} tires at the pressure they run`, missing: `a printed row (${describeError(found.left)})` }], decisions: compared };
  const counted = isPassenger(rating.designation.family) ? quotient(`${of} tire at pressure, in service`, found.right.load, passengerDivisor) : found.right.load;
  return { asRun: leastOf(`${of} tire at the pressure it runs`, [rating.rating, counted]), notes: found.right.notes, notChecked: [], decisions: [...compared, ...found.right.decisions] };
}

/** Rates the tires of one axle. */
export function tiresOf(spec: TireSpec, of: string): Either<TiresError, AxleTires> {
  const { designation, fitment, molded } = spec;
  const rated = tireLoadRating({ designation, ...(molded && { molded: molded as NonNullable<Parameters<typeof tireLoadRating>[0]['molded']> }) }, { fitment, on: 'trailer' });
  if (isLeft(rated)) {
    if (isUnreadable(rated.left)) return left(rated.left);
    return right({ of, spec, notes: [], notChecked: [{ what: `${of} tires`, missing: `a load rating (${describeError(rated.left)})` }], decisions: [] });
  }
  const run = atPressure(of, spec, rated.right);
  return right({
    of, spec, rating: rated.right, ...run,
    notes: [...rated.right.notes, ...run.notes].map((each) => note(each.tag, `${of}: ${each.says}`, each.figures)),
    decisions: [...rated.right.decisions, ...run.decisions],
  });
}

/** The pressure the load on one tire needs, by the printed rows; nothing when no row says. */
export function pressureNeeded(tires: AxleTires, load: Derived<'lb'>): PressureForLoad | undefined {
  if (tires.rating === undefined) return undefined;
  const found = pressureForLoad(tires.rating.designation, load, tires.spec.fitment);
  return isLeft(found) ? undefined : found.right;
}
