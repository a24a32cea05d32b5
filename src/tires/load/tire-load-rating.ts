/** What one tire may carry in service: molded load, then load index, then size and load range. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
  type Known,
  leastOf,
  notTabulated,
  quotient,
} from '../../trace/index.js';
import { ratio, show } from '../../units/index.js';
import { sources } from '../data/sources.js';
import { designationOf, keptFor } from '../designation/cache.js';
import { type Designation, designationNotes, isPassenger } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { loadIndex } from './load-index.js';
import { moldedLoad } from './molded-load.js';
import { pressureSteps } from './pressure-steps.js';
import { answerableRows, type Fitment, governing, publishedRows, ratedRows, tableLetter } from './published-rows.js';
import { moldedPressure } from './rated-pressure.js';

/** A tire as it is found: what the sidewall says. Molded figures outrank everything else. */
export interface Tire {
  readonly designation: string | Designation;
  readonly molded?: {
    readonly single?: Known<'lb' | 'kg'>;
    readonly dual?: Known<'lb' | 'kg'>;
    readonly pressure?: Known<'psi' | 'kPa'>;
  };
  /** Keep to this load table; otherwise the lowest print governs. */
  readonly table?: string;
}

/** How and on what the tire runs. `truck` stands for truck, bus and multipurpose vehicle. */
export interface Service {
  readonly fitment: Fitment;
  readonly on: 'trailer' | 'truck' | 'passenger car';
}

export interface TireRating {
  readonly tire: Tire;
  readonly service: Service;
  readonly designation: Designation;
  /** What one tire may carry. */
  readonly rating: Derived<'lb'>;
  readonly from: 'molded' | 'index' | 'table';
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

type From = TireRating['from'];

/** A passenger-car tire counts for its load over this on anything but a passenger car. */
export const passengerDivisor: Derived<'ratio'> = constant(ratio('1.10'), 'passenger tire divisor', sources.passenger);

/** Loads printed for a size and letter: all of them, the least, and whether they differ. */
interface Printed {
  readonly loads: readonly Derived<'lb'>[];
  readonly least: Derived<'lb'> | undefined;
  readonly differ: boolean;
  readonly decisions: readonly Decision[];
}

/** The load of an index: kilograms govern, in lb by the exact conversion; beside them the pounds that lists print. */
interface IndexLoad {
  readonly load: Derived<'lb'>;
  readonly printed: Derived<'lb'>;
}

function indexLoad(d: Designation, fitment: Fitment): Either<TiresError, IndexLoad | undefined> {
  const index = fitment === 'single' ? d.service?.single : d.service?.dual;
  if (index === undefined) return right(undefined);
  const found = loadIndex(index);
  return isLeft(found)
    ? found
    : right({ load: converted(`load at index ${index} in lb`, found.right.kg, 'lb'), printed: found.right.lb });
}

/** Of the steps that belong to the tire, the highest not above the pressure molded into it. */
function belowMolded(
  d: Designation,
  fitment: Fitment,
  table: string | undefined,
  molded: Derived<'psi'>,
): Either<TiresError, Printed> {
  const found = pressureSteps(d, fitment, table);
  if (isLeft(found)) return found;
  const reached = found.right.steps.map((step) => ({ step, decision: decide(step.pressure, '<=', molded) }));
  const last = reached.filter(({ decision }) => decision.holds).at(-1)?.step;
  const decisions = reached.map(({ decision }) => decision);
  if (last === undefined)
    return left(
      notTabulated(table ?? 'tire load and pressure tables', `${showDesignation(d)} at ${show(molded.value)}`, []),
    );
  return right({ loads: last.rows.flatMap((row) => row[fitment] ?? []), least: last.load, differ: false, decisions });
}

/** What the tables print for the letter of a tire, at the pressures they rate it at. */
interface RatedRows extends Printed {
  readonly letter: string;
  readonly pressures: readonly Derived<'psi'>[];
  /** Sizes that are printed, for whoever finds no load. */
  readonly printed: readonly string[];
}

function ratedFor(d: Designation, fitment: Fitment, table: string | undefined): Either<TiresError, RatedRows> {
  const rows = publishedRows(d, table);
  if (isLeft(rows)) return rows;
  const letter = tableLetter(d);
  if (letter === undefined) return left({ chapter: 'tires', tag: 'LoadRangeNeeded', designation: showDesignation(d) });
  const rated = ratedRows(answerableRows(d, rows.right), letter);
  const loads = rated.flatMap((row) => row[fitment] ?? []);
  return right({
    letter,
    pressures: rated.map(({ pressure }) => pressure),
    printed: [...new Set(rows.right.map((row) => row.key))].slice(0, 3),
    loads: Object.freeze(loads),
    least: governing('least of the printed loads', loads),
    differ: new Set(loads.map((load) => load.value.value.toFixed())).size > 1,
    decisions: [],
  });
}

const ratedByAllTables = {
  single: keptFor((d) => ratedFor(d, 'single', undefined)),
  dual: keptFor((d) => ratedFor(d, 'dual', undefined)),
};

/** The table load of a tire: at the pressure of its load range, or at the pressure molded into it when that is lower. */
function tableLoads(
  d: Designation,
  fitment: Fitment,
  table: string | undefined,
  molded?: Derived<'psi'>,
): Either<TiresError, Printed> {
  const found = table === undefined ? ratedByAllTables[fitment](d) : ratedFor(d, fitment, table);
  if (isLeft(found)) return found;
  const { letter, pressures, printed, loads, least, differ } = found.right;
  const decisions = molded === undefined ? [] : pressures.map((pressure) => decide(pressure, '<=', molded));
  if (molded !== undefined && decisions.some(({ holds }) => !holds)) return belowMolded(d, fitment, table, molded);
  if (loads.length > 0) return right({ loads, least, differ, decisions });
  if (fitment === 'dual' && pressures.length > 0)
    return left({ chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(d) });
  return left({
    chapter: 'trace',
    tag: 'NotTabulated',
    table: table ?? 'tire load and pressure tables',
    asked: `${showDesignation(d)}, load range ${letter}`,
    nearest: printed,
  });
}

/** The load from the index, from the tables, or none. */
const byIndex = { single: keptFor((d) => indexLoad(d, 'single')), dual: keptFor((d) => indexLoad(d, 'dual')) };
const byAllTables = {
  single: keptFor((d) => tableLoads(d, 'single', undefined)),
  dual: keptFor((d) => tableLoads(d, 'dual', undefined)),
};

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
const notAboveSingle = (
  load: Derived<'lb'> | undefined,
  fitment: Fitment,
  single: Derived<'lb'> | undefined,
): Derived<'lb'> | undefined =>
  load === undefined || single === undefined || fitment === 'single'
    ? load
    : leastOf('dual load, not above the molded single load', [load, single]);

/** Why there is no rating: for dual tires with some single load the missing dual load is the answer. */
function noRating(d: Designation, tire: Tire, fitment: Fitment, problem: TiresError): TiresError {
  const hasSingle = tire.molded?.single !== undefined || d.service !== undefined;
  return fitment === 'dual' && hasSingle
    ? { chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(d) }
    : problem;
}

/** A load, and the pounds that are printed for it: of an index, where kilograms govern, the two differ. */
interface Found {
  readonly from: From;
  readonly load: Derived<'lb'>;
  readonly printed: Derived<'lb'>;
}

/** Two loads are one figure when they print the same pounds, or, of an index, when they are the same kilograms. */
function sameFigure(one: Found, other: Found): readonly Decision[] {
  const printed = decide(one.printed, '=', other.printed);
  const ofIndex = one.from === 'index' || other.from === 'index';
  return printed.holds || !ofIndex ? [printed] : [printed, decide(one.load, '=', other.load)];
}

/** Notes for every figure that says something else than the one that governs; what is compared is handed back. */
function disagreements(governs: Found, others: readonly Found[]): { notes: Note[]; decisions: Decision[] } {
  const title = { molded: 'Molded', index: 'Index', table: 'Table' } as const;
  const compared = others.map((other) => ({ other, asked: sameFigure(governs, other) }));
  const notes = compared
    .filter(({ asked }) => !asked.some(({ holds }) => holds))
    .map(({ other }) =>
      note(
        `${title[governs.from]}DiffersFrom${title[other.from]}`,
        `the ${governs.from} load governs; the ${other.from} load is another figure`,
        [governs.printed, other.printed],
      ),
    );
  return { notes, decisions: compared.flatMap(({ asked }) => asked) };
}

/**
 * What may this tire carry in this service?
 *
 * The molded load for the fitment if given, else the kilograms of its load index, else the table load of size and load range
 * (the lowest print, unless a table is named). A table load counts only at the pressure of its own row: where the tire is molded
 * with less, the row at or below that pressure. A passenger-car tire on a trailer or truck: `rating = load / 1.10`.
 *
 * Dual loads come from the molded dual load, the dual index or a dual column, never from a single load; a sidewall that shows a
 * single load only is not answered from a table, and no dual load stands above the molded single one. Speed and pressure
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
  const molded = moldedLoad(tire.molded ?? {}, fitment);
  if (isLeft(molded)) return molded;
  const ownPressure = moldedPressure(tire, designation);
  if (isLeft(ownPressure)) return ownPressure;
  const indexed = byIndex[fitment](designation);
  if (isLeft(indexed)) return indexed;
  const { pressure } = ownPressure.right;
  const listed =
    tire.table === undefined && pressure === undefined
      ? byAllTables[fitment](designation)
      : tableLoads(designation, fitment, tire.table, pressure);
  if (isLeft(listed) && tire.table !== undefined) return listed;
  const table = isLeft(listed) || showsSingleOnly(tire, fitment) ? undefined : listed.right.least;
  const capped = (load: Derived<'lb'> | undefined): Derived<'lb'> | undefined =>
    notAboveSingle(load, fitment, molded.right.single);
  const all: readonly { from: From; load: Derived<'lb'> | undefined; printed?: Derived<'lb'> | undefined }[] = [
    { from: 'molded', load: molded.right.load },
    { from: 'index', load: capped(indexed.right?.load), printed: capped(indexed.right?.printed) },
    { from: 'table', load: capped(table) },
  ];
  const found = all.flatMap(({ from, load, printed = load }) =>
    load === undefined || printed === undefined ? [] : [{ from, load, printed }],
  );
  const [governs, ...others] = found;
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
  if (table !== undefined && !isLeft(listed) && listed.right.differ) {
    notes.push(note('TablesDisagree', 'printed tables give different loads; the lowest is taken', listed.right.loads));
  }
  if (isDivided(designation, service))
    notes.push(note('PassengerTire', 'a passenger-car tire on a trailer or truck: its load is divided by 1.10'));
  return right({
    tire,
    service,
    designation,
    rating: inService(designation, service, governs.load),
    from: governs.from,
    notes: [...designationNotes(designation), ...notes],
    decisions: [
      ...molded.right.decisions,
      ...ownPressure.right.decisions,
      ...(isLeft(listed) ? [] : listed.right.decisions),
      ...decisions,
    ],
  });
}
