/** Which brake and which hub usually sit on an axle of this rating. A convention of the trade, never a way to a capacity. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyWeight,
  constant,
  type Decision,
  type Derived,
  decide,
  fromTable,
  inPounds,
  type NotTabulated,
  notTabulated,
  type Table,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { type BrakeSizeRow, brakeSizes } from '../data/brake-sizes.js';
import { type HubRow, hubConventions } from '../data/hub-conventions.js';
import type { HardwareError } from './hardware-errors.js';
import { allPositive } from './hardware-guards.js';

/** Which drum brake usually sits on which axle: a convention, not a rating. */
export const usualBrakeSizes = brakeSizes.rows;

/** What is usually met on axles of a rating: bearings and bolt circles, with their grades. Data, not a way to a capacity. */
export const usualHubs = hubConventions.rows;

/** A row of a convention, what is to be said of it, and the comparisons that chose it. */
export interface Usual<Row> {
  readonly row: Row;
  /** Where only this convention speaks and no open class table: what is asked for instead. */
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

type AxleRange = Pick<HubRow, 'axleFromLb' | 'axleToLb'>;

const rangeText = ({ axleFromLb, axleToLb }: AxleRange): string =>
  axleFromLb === axleToLb ? `${axleToLb} lb axle` : `${axleFromLb} to ${axleToLb} lb axle`;

/** From here on no open class table of brakes or hubs was found. */
const tablesEnd = constant(lb(8000), 'axles without an open class table, from');

/** What stands in for a class table that there is none of: what is asked for. */
interface Instead {
  readonly askedFor: string;
  readonly noTable: string;
}

/** The row whose range holds the rating; the ends of each range are in it. */
function rowOfAxle<Row extends AxleRange>(
  table: Table<Row>,
  rating: AnyWeight,
  { askedFor, noTable }: Instead,
): Either<HardwareError | NotTabulated, Usual<Row>> {
  const asked = inPounds('axle rating', rating);
  const positive = allPositive([['axle rating', asked]]);
  if (isLeft(positive)) return positive;
  const decisions: Decision[] = [...positive.right];
  for (const row of table.rows) {
    const end = (name: string, digits: string): Derived<'lb'> =>
      fromTable(name, lb(digits), { table: table.name, key: rangeText(row), source: table.source });
    const fromHere = decide(asked, '>=', end('from', row.axleFromLb));
    const toHere = decide(asked, '<=', end('to', row.axleToLb));
    decisions.push(fromHere, toHere);
    if (!fromHere.holds || !toHere.holds) continue;
    const heavy = decide(asked, '>=', tablesEnd);
    const says = `${noTable}, only this convention: the stamping is asked for; ${askedFor}`;
    const notes = heavy.holds ? [note('NoOpenClassTable', says, [asked])] : [];
    return right({ row, notes, decisions: [...decisions, heavy] });
  }
  const instead = `${askedFor}; ${noTable}`;
  return left(notTabulated(table.name, `${showInWords(asked.value)} axle`, table.rows.map(rangeText), instead));
}

/**
 * Which drum brake usually sits on an axle of this rating?
 *
 * A table, no formula: 10 x 2-1/4 in on 2,000 to 3,500 lb axles, 12 x 2 in on 5,200 to 7,000 lb, 12-1/4 in heavy on 8,000 to
 * 10,000 lb, ends included. A convention, not a rating: `brakeCapacity` asks for the rating of the brake itself.
 *
 * The rows end at 10,000 lb, and there is none between the ranges. For axles of 8,000 lb and more no open class table was found,
 * only this convention: the note `NoOpenClassTable` says so, and that the size stamped or cast on the brake is asked for.
 *
 * @param axleRating from the axle tag, any unit of weight
 * @returns the row, a note from 8,000 lb on, its decisions; Left `HardwareNotAboveZero`, or `NotTabulated` with the rows there are
 * @example usualBrake(lb(8000)) // Right 12-1/4 heavy 'NoOpenClassTable'
 * @source trade parts guide, undated, grade C
 */
export const usualBrake = (axleRating: AnyWeight): Either<HardwareError | NotTabulated, Usual<BrakeSizeRow>> =>
  rowOfAxle<BrakeSizeRow>(brakeSizes, axleRating, {
    askedFor: 'read the size and rating on the brake itself',
    noTable: 'for axles of 8,000 lb and more there is no open class table',
  });

/**
 * Which bearings and bolt circles usually sit on an axle of this rating?
 *
 * A table, no formula; rows for 2,000 to 2,200, 3,500, 5,200 to 6,000 and 7,000 lb axles, ends included. Makers vary. Nothing
 * follows the other way round: neither a bearing nor a bolt circle says what an axle may carry.
 *
 * The rows end at 7,000 lb. For axles of 8,000 lb and more no open table of hubs was found: the numbers stamped on the hub and
 * on the bearings are asked for.
 *
 * @param axleRating from the axle tag, any unit of weight
 * @returns the row and its decisions, no note; Left `HardwareNotAboveZero`, or `NotTabulated` with the rows there are
 * @example usualHub(lb(3500)) // Right inner bearing L68149
 * @source web pages and trade parts pages, grade C; bolt circles each with a grade of its own
 */
export const usualHub = (axleRating: AnyWeight): Either<HardwareError | NotTabulated, Usual<HubRow>> =>
  rowOfAxle<HubRow>(hubConventions, axleRating, {
    askedFor: 'read the numbers stamped on hub and bearings',
    noTable: 'for axles of 8,000 lb and more there is no open table',
  });
