/** What do the printed tables say a chain, a strap or a rope may pull at work? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  type Derived,
  findRow,
  fromTable,
  inPounds,
  type NotTabulated,
  over,
  result,
  type Source,
  type Table,
} from '../../trace/index.js';
import { kg, lb } from '../../units/index.js';
import { type ChainGrade, chainWll } from '../data/chain-wll.js';
import { webbingWll } from '../data/webbing-wll.js';
import { wireRopeWll } from '../data/wire-rope-wll.js';
import { apart, plainSize } from './gear-size.js';

/** A printed working load limit in both printed units. */
export interface PrintedWll {
  readonly lb: Derived<'lb'>;
  /** The kilograms as printed in the same row, not converted. */
  readonly kg: Derived<'kg'>;
}

function printedIn<Row extends { readonly lb: string; readonly kg: string }>(
  table: Table<Row>,
  what: string,
  keyOf: (row: Row) => string,
  key: string,
  near: (key: string) => number,
): Either<NotTabulated, PrintedWll> {
  const row = findRow(table, keyOf, key, near);
  if (isLeft(row)) return row;
  const from = { table: table.name, key, source: table.source };
  return right({
    lb: fromTable(`working load limit of ${what}`, lb(row.right.lb), from),
    kg: fromTable(`working load limit of ${what}, kg`, kg(row.right.kg), from),
  });
}

/**
 * What is the printed working load limit of this chain?
 *
 * The row of size and grade; no interpolation. Grade 80 at 5/16 in is printed below grade 70, and stays so.
 *
 * A marking on the chain outranks the table: see `tiedownWll`. The table binds commercial carriers.
 *
 * @param size nominal, in inches as printed: `'3/8'`
 * @param grade stamped on the links; `'unmarked'` is read as grade 30
 * @returns lb and kg as printed. Left `NotTabulated` with the nearest rows
 * @example orThrow(chainLimit('3/8', '70')).lb // 6,600 lb
 * @source 49 CFR 393.108, reproduction, undated
 */
export function chainLimit(size: string, grade: ChainGrade | 'unmarked'): Either<NotTabulated, PrintedWll> {
  const asked = plainSize(size);
  const read = grade === 'unmarked' ? '30' : grade;
  const far = apart(asked);
  const near = (key: string): number => far(key) * 1000 + (key.endsWith(` ${read}`) ? 0 : 1);
  return printedIn(
    chainWll,
    `${asked} in chain, grade ${read}`,
    (row) => `${row.inches} grade ${row.grade}`,
    `${asked} grade ${read}`,
    near,
  );
}

/**
 * What is the printed working load limit of synthetic webbing of this width?
 *
 * The row of the width; no interpolation. A marking on the webbing outranks the table.
 *
 * @param width nominal, in inches as printed: `'2'`
 * @returns lb and kg as printed. Left `NotTabulated` with the nearest rows
 * @example orThrow(webbingLimit('2')).lb // 2,000 lb
 * @source 49 CFR 393.108, reproduction, undated
 */
export const webbingLimit = (width: string): Either<NotTabulated, PrintedWll> =>
  printedIn(
    webbingWll,
    `${plainSize(width)} in webbing`,
    (row) => row.inches,
    plainSize(width),
    apart(plainSize(width)),
  );

/**
 * What is the printed working load limit of wire rope of this diameter?
 *
 * The row of the diameter; no interpolation. A marking on the rope outranks the table.
 *
 * @param diameter nominal, in inches as printed: `'3/8'`
 * @returns lb and kg as printed. Left `NotTabulated` with the nearest rows
 * @example orThrow(wireRopeLimit('3/8')).lb // 3,000 lb
 * @source 49 CFR 393.108, reproduction, undated
 */
export const wireRopeLimit = (diameter: string): Either<NotTabulated, PrintedWll> =>
  printedIn(
    wireRopeWll,
    `${plainSize(diameter)} in wire rope`,
    (row) => row.inches,
    plainSize(diameter),
    apart(plainSize(diameter)),
  );

const unmarkedRope: Source = Object.freeze({
  id: 'cfr-393-108-unmarked',
  title: '49 CFR 393.108',
  edition: 'reproduction, undated',
  clause: 'unmarked wire rope',
  grade: 'B',
});

/**
 * What is the working load limit of wire rope without a marking?
 *
 * `nominal strength / 4`.
 *
 * Only for rope whose maker states the nominal strength; a marking outranks it.
 *
 * @param nominalStrength of the rope, lb, from its maker
 * @returns lb
 * @example unmarkedWireRope(lb(12000)) // 3,000 lb
 * @source 49 CFR 393.108, reproduction, undated
 */
export const unmarkedWireRope = (nominalStrength: AnyWeight): Derived<'lb'> =>
  result(
    'working load limit of unmarked wire rope',
    over(inPounds('nominal strength of the rope', nominalStrength), 4),
    unmarkedRope,
  );
