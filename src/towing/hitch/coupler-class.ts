/** Which coupler class a trailer falls in, and the strengths that class must show. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyWeight,
  asForce,
  type Decision,
  type Derived,
  decide,
  fromTable,
  inPounds,
  type NotTabulated,
  notTabulated,
  renamed,
  result,
  times,
} from '../../trace/index.js';
import { inch, lb, lbf, ratio } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { type CouplerClassRow, couplerClasses, type PrintedStrength } from '../data/coupler-classes.js';
import { chainsEach } from '../data/sources.js';
import type { NotAboveZero } from '../errors.js';
import { allAboveZero } from '../figures.js';

export interface CouplerClass {
  readonly couplerClass: CouplerClassRow['couplerClass'];
  /** Least diameter of the ball; absent for class 4, where the ball is sized to the strength. */
  readonly ball?: Derived<'in'>;
  readonly tension: Derived<'lbf'>;
  readonly compression: Derived<'lbf'>;
  readonly transverse: Derived<'lbf'>;
  readonly verticalTension: Derived<'lbf'>;
  readonly verticalCompression: Derived<'lbf'>;
  /** Breaking strength of each chain in the scheme that asks it of each. */
  readonly chainEach: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

const readTheStamping = 'no open class table reaches above 10,000 lb: read the rating stamped on the coupler';

const from = (row: CouplerClassRow): { table: string; key: string; source: typeof couplerClasses.source } => ({
  table: couplerClasses.name,
  key: `class ${row.couplerClass}`,
  source: couplerClasses.source,
});

function strength(
  symbol: string,
  printed: PrintedStrength,
  row: CouplerClassRow,
  gross: Derived<'lb'>,
): Derived<'lbf'> {
  if ('lbf' in printed) return fromTable(symbol, lbf(printed.lbf), from(row));
  return result(symbol, times(asForce(gross), fromTable(`factor of ${symbol}`, ratio(printed.times), from(row))));
}

/**
 * Which class must the coupler be for a trailer of this gross weight, and what test forces must such a coupler withstand?
 *
 * Class 1 to 2,000 lb, 2 to 3,500, 3 to 5,000, 4 to 10,000, ends included. Classes 1 to 3 print forces; class 4 prints factors
 * of the maximum gross trailer weight. Static test strengths, not ratings to load up to.
 *
 * The classes end at 10,000 lb: no open class table for heavier couplers was found. There the rating stamped on the coupler is
 * asked for; where there is a class, the stamping counts as well.
 *
 * @param gross the maximum gross trailer weight, by the trailer's GVWR; any unit of weight
 * @returns forces in lbf, chain breaking strength in lb. Left `NotTabulated` above 10,000 lb, `NotAboveZero`
 * @example couplerClass(lb(7000)) // Right '4', tension 21,000 lbf
 * @source Md. COMAR 11.13.08.04 and .10, current through 2024-12-27; chains: two secondary pages on SAE J684 (2005)
 */
export function couplerClass(gross: AnyWeight): Either<NotAboveZero | NotTabulated, CouplerClass> {
  const weight = inPounds('maximum gross trailer weight', gross);
  const above = allAboveZero([['maximum gross trailer weight', weight]]);
  if (isLeft(above)) return above;
  const decisions: Decision[] = [...above.right];
  for (const row of couplerClasses.rows as readonly CouplerClassRow[]) {
    const fits = decide(weight, '<=', fromTable(`class ${row.couplerClass} limit`, lb(row.maxLb), from(row)));
    decisions.push(fits);
    if (fits.holds) return right({ ...classOf(row, weight), decisions });
  }
  return left(
    notTabulated(couplerClasses.name, showInWords(weight.value, 'up'), ['class 4, to 10,000 lb'], readTheStamping),
  );
}

function classOf(row: CouplerClassRow, gross: Derived<'lb'>): Omit<CouplerClass, 'decisions'> {
  return {
    couplerClass: row.couplerClass,
    ...(row.ballIn !== undefined && { ball: fromTable('least ball diameter', inch(row.ballIn), from(row)) }),
    tension: strength('longitudinal tension', row.tension, row, gross),
    compression: strength('longitudinal compression', row.compression, row, gross),
    transverse: strength('transverse', row.transverse, row, gross),
    verticalTension: strength('vertical tension', row.verticalTension, row, gross),
    verticalCompression: strength('vertical compression', row.verticalCompression, row, gross),
    chainEach:
      row.chainEachLb === undefined
        ? renamed('breaking strength of each chain', gross)
        : fromTable('breaking strength of each chain', lb(row.chainEachLb), {
            table: couplerClasses.name,
            key: `class ${row.couplerClass}, chains`,
            source: chainsEach,
          }),
  };
}
