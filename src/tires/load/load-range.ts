/** Load range: the letter, its ply rating, and its pressure in a tire family or size. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import { type Derived, findRow, fromTable, leastOf, type NotTabulated, type Source } from '../../trace/index.js';
import { kPa, psi } from '../../units/index.js';
import { designationOf } from '../designation/cache.js';
import type { Designation, LoadRangeLetter, TireFamily } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import type { FamilyPressureRow } from '../rows.js';
import { familyPressureTable, loadRangeTable } from '../tables.js';
import { printedSizes, publishedRows, ratedRows } from './published-rows.js';

export interface LoadRange {
  readonly letter: LoadRangeLetter;
  readonly plyRating: number;
  readonly source: Source;
}

/**
 * What ply rating does this load range letter mean?
 *
 * A table: A is 2, each further letter two more; I and K are skipped. A ply rating is a name for strength, not a count of plies,
 * and no pressure: see `rangePressure`.
 *
 * @param letter the letter after "load range" on the sidewall
 * @returns letter and ply rating; Left `NotTabulated`
 * @example loadRange('D') // Right: ply rating 8
 * @source page quoting the 2010 year book of the Tire and Rim Association, grade C
 */
export function loadRange(letter: string): Either<NotTabulated, LoadRange> {
  const found = findRow(loadRangeTable, ([key]) => key, letter.slice(0, 8).toUpperCase());
  if (isLeft(found)) return found;
  return right({
    letter: found.right[0] as LoadRangeLetter,
    plyRating: Number(found.right[1]),
    source: loadRangeTable.source,
  });
}

export interface RangePressure {
  readonly pressure: Derived<'psi'>;
  /** As the table prints it, where it does: not an exact conversion. */
  readonly kPa?: Derived<'kPa'>;
  readonly notes: readonly Note[];
}

/** The pressure printed for a family and letter. */
export function ofFamily([family, letter, inPsi, inKPa]: FamilyPressureRow, notes: readonly Note[]): RangePressure {
  const from = { table: familyPressureTable.name, key: `${family} ${letter}`, source: familyPressureTable.source };
  return {
    pressure: fromTable(`pressure of ${family} ${letter}`, psi(inPsi), from),
    kPa: fromTable(`printed kPa of ${family} ${letter}`, kPa(inKPa), from),
    notes,
  };
}

/** The pressures printed for one size and letter, each with its table. */
function ofSize(designation: Designation, letter: string): readonly Derived<'psi'>[] {
  const rows = publishedRows(designation);
  return isLeft(rows) ? [] : ratedRows(rows.right, letter).map((row) => row.pressure);
}

/**
 * What pressure goes with this load range in this family, and, for small sizes, in this size?
 *
 * A table figure. The letter alone gives none: load range E is 80 psi in ST metric, 75 psi on an 8.00-16.5. Where a numeric
 * size is printed with its own pressure that figure governs, and the lower of two prints; a metric size keeps the family's
 * figure, and a note gives the other print. The pressure molded into the tire outranks all of them.
 *
 * @param family from a designation, such as `ST-metric`
 * @param letter load range letter; SL, XL or LL for P-metric, SL, XL or RF for Euro-metric
 * @param size the designation, for families and letters without a pressure of their own
 * @returns psi, printed kPa, notes; Left `SizeNeeded`, `NotTabulated`, or what `readTireDesignation` returns
 * @example rangePressure('ST-metric', 'D') // Right: 65 psi
 * @source load-range pages and trailer tire size charts, undated, grade C
 */
export function rangePressure(
  family: TireFamily,
  letter: string,
  size?: string | Designation,
): Either<TiresError, RangePressure> {
  const key = letter.slice(0, 8).toUpperCase();
  const row = familyPressureTable.rows.find(([of, at]) => of === family && at === key);
  if (size === undefined) return row === undefined ? left(familyOnly(family, key)) : right(ofFamily(row, []));
  const read = designationOf(size);
  if (isLeft(read)) return read;
  const printed = ofSize(read.right, key);
  if (row !== undefined && (printed.length === 0 || read.right.size.form !== 'numeric')) {
    const other = printed.filter((pressure) => pressure.value.value.toFixed() !== row[2]);
    return right(
      ofFamily(
        row,
        other.length === 0
          ? []
          : [
              note(
                'OtherPressurePrinted',
                'a table prints another pressure for this size and load range; the tire says which is its own',
                other,
              ),
            ],
      ),
    );
  }
  if (printed.length === 0) return publishedLetter(read.right, key);
  return right({ pressure: leastOf(`pressure of load range ${key} in this size`, printed), notes: [] });
}

const familyOnly = (family: string, letter: string): TiresError => ({
  chapter: 'tires',
  tag: 'SizeNeeded',
  family,
  letter,
});

function publishedLetter(designation: Designation, letter: string): Either<TiresError, never> {
  const rows = publishedRows(designation);
  if (isLeft(rows)) return rows;
  return left({
    chapter: 'trace',
    tag: 'NotTabulated',
    table: 'tire load and pressure tables',
    asked: `${rows.right[0]?.size ?? ''} load range ${letter}`,
    nearest: printedSizes(rows.right),
  });
}
