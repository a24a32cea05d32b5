/** What one tire may carry in service: molded load, then load index, then size and load range. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { note } from '../../ratings/index.js';
import { constant, type Derived, leastOf, quotient, recordingDecisions } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { compareFigures, orNone, own } from '../../units/internal.js';
import { sources } from '../data/sources.js';
import { designationOf } from '../designation/cache.js';
import { type Designation, designationNotes, isPassenger } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { disagreements, type Found, type From } from './figures-that-differ.js';
import { byAllTables, byIndex, tableLoads } from './listed-load.js';
import { moldedLoad } from './molded-load.js';
import type { Fitment } from './published-rows.js';
import { moldedPressure } from './rated-pressure.js';
import type { Service, Tire, TireRating } from './tire.js';

/** A passenger-car tire counts for its load over this on anything but a passenger car. */
export const passengerDivisor: Derived<'ratio'> = constant(ratio('1.10'), 'passenger tire divisor', sources.passenger);

/** Whether the tire counts for its load over 1.10 here. */
export const isDivided = (d: Designation, service: Service): boolean =>
  isPassenger(d.family) && service.on !== 'passenger car';

/** A load of the sidewall or a table as it counts in this service. */
export const inService = (d: Designation, service: Service, load: Derived<'lb'>): Derived<'lb'> =>
  isDivided(d, service) ? quotient('tire load in service', load, passengerDivisor, sources.passenger) : load;

/** A sidewall with a single load and no dual load is that of a tire not rated for dual use (49 CFR 571.119 S6.5(d)): a table does not change that. */
const showsSingleOnly = ({ molded }: Tire, fitment: Fitment): boolean =>
  fitment === 'dual' && molded?.single !== undefined && molded.dual === undefined;

/** A dual load from index or table, kept at or below the molded single load. */
const notAboveSingle = (load: Derived<'lb'>, fitment: Fitment, single: Derived<'lb'> | undefined): Derived<'lb'> =>
  single === undefined || fitment === 'single'
    ? load
    : leastOf('dual load, not above the molded single load', [load, single]);

/** Why there is no rating: for dual tires with some single load the missing dual load is the answer. */
function noRating(d: Designation, tire: Tire, fitment: Fitment, problem: TiresError): TiresError {
  const hasSingle = tire.molded?.single !== undefined || d.service !== undefined;
  return fitment === 'dual' && hasSingle
    ? { chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(d) }
    : problem;
}

/**
 * What may this tire carry in this service?
 *
 * The molded load for the fitment if given, else the kilograms of its load index, else the table load of size and load range
 * (the lowest print, unless a table is named). A table load counts only at the pressure of its own row: where the tire is molded
 * with less, the row at or below that pressure. A passenger-car tire on a trailer or truck: `rating = load / 1.10`.
 *
 * Dual loads come from the molded dual load, the dual index or a dual column, never from a single load; a sidewall that shows a
 * single load only is not answered from a table, and no dual load exceeds the molded single one. Speed and pressure
 * allowances of makers and associations do not enter. The rating holds at the molded or table pressure, not below it.
 *
 * @param tire designation and molded figures, read from the sidewall; loads in lb or kg
 * @param service single or dual wheels, and the kind of vehicle
 * @returns lb a tire, where it comes from, notes on figures that disagree; Left `UnreadableDesignation`, `NotPositive`,
 * `DualAboveSingle`, `NoDualRating`, `LoadRangeNeeded`, `NotTabulated`
 * @example tireLoadRating({ designation: 'ST225/75R15 LRD' }, { fitment: 'single', on: 'trailer' }) // Right: 2,540 lb from the table
 * @source 49 CFR 571.120 S5.1.2 as read in agency letter nht76-1.47 (1.10); order of sources: common practice, no source
 */
export function tireLoadRating(tire: Tire, service: Service): Either<TiresError, TireRating> {
  const read = designationOf(tire.designation);
  if (isLeft(read)) return read;
  const designation = read.right;
  const { fitment } = service;
  const molded = moldedLoad(orNone(own(tire, 'molded')), fitment);
  if (isLeft(molded)) return molded;
  const ownPressure = moldedPressure(tire, designation);
  if (isLeft(ownPressure)) return ownPressure;
  const indexed = byIndex[fitment](designation);
  if (isLeft(indexed)) return indexed;
  const { pressure } = ownPressure.right;
  const { result: listed, decisions: ofTables } = recordingDecisions(() =>
    tire.table === undefined && pressure === undefined
      ? byAllTables[fitment](designation)
      : tableLoads(designation, fitment, tire.table, pressure),
  );
  if (isLeft(listed) && tire.table !== undefined) return listed;
  const table = isLeft(listed) || showsSingleOnly(tire, fitment) ? undefined : listed.right.least;
  const capped = (load: Derived<'lb'>): Derived<'lb'> => notAboveSingle(load, fitment, molded.right.single);
  const stated = (from: From, load: Derived<'lb'>, printed = load): Found => ({ from, load, printed });
  const index = indexed.right;
  const [governs, ...others] = [
    ...(molded.right.load ? [stated('molded', molded.right.load)] : []),
    ...(index ? [stated('index', capped(index.load), capped(index.printed))] : []),
    ...(table ? [stated('table', capped(table))] : []),
  ];
  if (governs === undefined)
    return left(
      noRating(
        designation,
        tire,
        fitment,
        isLeft(listed)
          ? listed.left
          : { chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(designation) },
      ),
    );
  const { notes, decisions } = disagreements(governs, others);
  const prints = isLeft(listed) ? [] : listed.right.loads;
  if (table !== undefined && prints.some(({ value }) => compareFigures(value, table.value) !== 0))
    notes.push(note('TablesDisagree', 'printed tables give different loads; the lowest is taken', prints));
  if (isDivided(designation, service))
    notes.push(note('PassengerTire', 'a passenger-car tire on a trailer or truck: its load is divided by 1.10'));
  return right({
    tire,
    service,
    designation,
    rating: inService(designation, service, governs.load),
    from: governs.from,
    notes: [...designationNotes(designation), ...notes],
    decisions: [...molded.right.decisions, ...ownPressure.right.decisions, ...ofTables, ...decisions],
  });
}
