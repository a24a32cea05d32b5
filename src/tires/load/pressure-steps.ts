/** The printed steps of pressure that one tire may use, with the load at each. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Derived, type NotTabulated, notTabulated } from '../../trace/index.js';
import { compareFigures } from '../../units/internal.js';
import { keptFor } from '../designation/cache.js';
import { type Designation, designationNotes, isPassenger } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { plyOf } from './ply.js';
import {
  answerableRows,
  type Fitment,
  familyPressureOf,
  governing,
  type PublishedRow,
  printedSizes,
  publishedRows,
  ratedRows,
  tableLetter,
} from './published-rows.js';

export interface PressureStep {
  readonly pressure: Derived<'psi'>;
  readonly load: Derived<'lb'>;
  /** Every print at this pressure. */
  readonly rows: readonly PublishedRow[];
}

export interface PressureSteps {
  /** Least pressure first; at least one. */
  readonly steps: readonly PressureStep[];
  /** True when the last step is the pressure that the tire's own load range is rated at. */
  readonly capped: boolean;
  readonly notes: readonly Note[];
}

/** The highest pressure that belongs to the tire's letter: the lowest of what the tables rate it at, else the family's. */
function cap(d: Designation, rows: readonly PublishedRow[], letter: string): number | undefined {
  const rated = ratedRows(rows, letter).map((row) => row.pressure.value.value.toNumber());
  if (rated.length > 0) return Math.min(...rated);
  const family = familyPressureOf(d.family, letter);
  return family === undefined ? undefined : Number(family);
}

/** Rows above the tire's own letter belong to stronger tires. */
const withinLetter = (row: PublishedRow, letter: string): boolean =>
  row.letter === '' || row.letter === letter || (plyOf(row.letter) ?? Infinity) <= (plyOf(letter) ?? 0);

function usable(
  d: Designation,
  rows: readonly PublishedRow[],
): { rows: readonly PublishedRow[]; most: number | undefined } {
  const letter = tableLetter(d);
  if (letter === undefined) return { rows, most: undefined };
  const most = cap(d, rows, letter);
  return {
    rows: rows.filter((row) => withinLetter(row, letter) && (most === undefined || row.pressure.value.value.lte(most))),
    most,
  };
}

function stepsFor(d: Designation, fitment: Fitment, tableName: string | undefined): Either<TiresError, PressureSteps> {
  const found = publishedRows(d, tableName);
  if (isLeft(found)) return found;
  const { rows, most } = usable(d, answerableRows(d, found.right));
  const loaded = rows.filter((row) => row[fitment] !== undefined);
  if (loaded.length === 0) {
    return left(
      fitment === 'dual' && rows.length > 0
        ? { chapter: 'tires', tag: 'NoDualRating', designation: showDesignation(d) }
        : noRows(d, found.right),
    );
  }
  const groups = new Map<string, PublishedRow[]>();
  for (const row of loaded) {
    const at = row.pressure.value.value.toFixed();
    groups.set(at, [...(groups.get(at) ?? []), row]);
  }
  const steps = [...groups].map(([at, group]): PressureStep => {
    const loads = group.map((row) => row[fitment] as Derived<'lb'>);
    return {
      pressure: (group[0] as PublishedRow).pressure,
      load: governing(`least of the printed loads at ${at} psi`, loads) as Derived<'lb'>,
      rows: group,
    };
  });
  const top = steps.at(-1)?.pressure.value.value;
  return right({ steps, capped: most !== undefined && top?.eq(most) === true, notes: notesOn(d) });
}

const ofAllTables = {
  single: keptFor((d) => stepsFor(d, 'single', undefined)),
  dual: keptFor((d) => stepsFor(d, 'dual', undefined)),
};

/** The steps that belong to a tire. The rows are the table's, so sorting and grouping them is no decision about a given figure. */
export const pressureSteps = (
  d: Designation,
  fitment: Fitment,
  tableName: string | undefined,
): Either<TiresError, PressureSteps> =>
  tableName === undefined ? ofAllTables[fitment](d) : stepsFor(d, fitment, tableName);

const noRows = (d: Designation, rows: readonly PublishedRow[]): NotTabulated =>
  notTabulated('tire load and pressure tables', showDesignation(d), printedSizes(rows));

function notesOn(d: Designation): readonly Note[] {
  const notes = [...designationNotes(d)];
  if (tableLetter(d) === undefined)
    notes.push(
      note(
        'LoadRangeNotStated',
        'without a load range all printed rows of the size are used; the load and pressure molded into the tire still limit it',
      ),
    );
  if (isPassenger(d.family))
    notes.push(note('PassengerTable', 'a table load of a passenger tire: on a trailer its rating is divided by 1.10'));
  return notes;
}

/** A note when the prints at one step differ. */
export function disagreement({ rows, load }: PressureStep, fitment: Fitment): readonly Note[] {
  const loads = rows.map((row) => row[fitment] as Derived<'lb'>);
  return loads.every(({ value }) => compareFigures(value, load.value) === 0)
    ? []
    : [note('TablesDisagree', 'printed tables give different loads at this pressure; the lowest is taken', loads)];
}
