/** The load of a tire by its index and by printed tables, for a designation alone. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { converted, type Derived, decide, notTabulated } from '../../trace/index.js';
import { showInWords } from '../../units/internal.js';
import { keptFor } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { loadIndex } from './load-index.js';
import { pressureSteps } from './pressure-steps.js';
import {
  answerableRows,
  type Fitment,
  governing,
  printedSizes,
  publishedRows,
  ratedRows,
  tableLetter,
} from './published-rows.js';

/** Loads printed for a size and letter: all of them, and the least. */
interface Printed {
  readonly loads: readonly Derived<'lb'>[];
  readonly least: Derived<'lb'> | undefined;
}

/** The load of an index: kilograms govern, in lb by the exact conversion; also the pounds that lists print. */
interface IndexLoad {
  readonly load: Derived<'lb'>;
  readonly printed: Derived<'lb'>;
}

/** What rows print for a fitment. */
const loadsOf = (
  rows: readonly { readonly [F in Fitment]?: Derived<'lb'> | undefined }[],
  fitment: Fitment,
): readonly Derived<'lb'>[] => rows.map((row) => row[fitment]).filter((load) => load !== undefined);

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
  const last = found.right.steps.filter((step) => decide(step.pressure, '<=', molded).holds).at(-1);
  if (last === undefined)
    return left(
      notTabulated(
        table ?? 'tire load and pressure tables',
        `${showDesignation(d)} at ${showInWords(molded.value)}`,
        [],
      ),
    );
  return right({ loads: loadsOf(last.rows, fitment), least: last.load });
}

/** The table load of a tire: at the pressure of its load range, or at the pressure molded into it when that is lower. Its decisions are seen by `recordingDecisions` only: a refusal returns none. */
export function tableLoads(
  d: Designation,
  fitment: Fitment,
  table: string | undefined,
  molded?: Derived<'psi'>,
): Either<TiresError, Printed> {
  const found = table === undefined ? ratedByAllTables[fitment](d) : ratedFor(d, fitment, table);
  if (isLeft(found)) return found;
  const { letter, pressures, printed, loads, least } = found.right;
  const counted = molded === undefined ? [] : pressures.map((pressure) => decide(pressure, '<=', molded));
  if (molded !== undefined && counted.some(({ holds }) => !holds)) return belowMolded(d, fitment, table, molded);
  if (loads.length > 0) return right({ loads, least });
  if (fitment === 'dual' && pressures.length > 0)
    return left({ chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(d) });
  const where = table ?? 'tire load and pressure tables';
  return left(
    d.range === undefined && d.version === undefined
      ? notTabulated(
          where,
          showDesignation(d),
          printed,
          'the load range is missing: write it where the sidewall says so',
        )
      : notTabulated(where, `${showDesignation(d)}, load range ${letter}`, printed),
  );
}

/** The load from the index, from the tables, or none. */
export const byIndex = { single: keptFor((d) => indexLoad(d, 'single')), dual: keptFor((d) => indexLoad(d, 'dual')) };

export const byAllTables = {
  single: keptFor((d) => tableLoads(d, 'single', undefined)),
  dual: keptFor((d) => tableLoads(d, 'dual', undefined)),
};

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
  const loads = loadsOf(rated, fitment);
  return right({
    letter,
    pressures: rated.map(({ pressure }) => pressure),
    printed: printedSizes(rows.right),
    loads: Object.freeze(loads),
    least: governing('least of the printed loads', loads),
  });
}

const ratedByAllTables = {
  single: keptFor((d) => ratedFor(d, 'single', undefined)),
  dual: keptFor((d) => ratedFor(d, 'dual', undefined)),
};
