/** The pressure at which a tire's rating holds. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { constant, type Decision, type Derived, decide, inUnit } from '../../trace/index.js';
import { kPa } from '../../units/index.js';
import { keptFor } from '../designation/cache.js';
import type { Designation } from '../designation/designation.js';
import { showDesignation } from '../designation/show-designation.js';
import type { TiresError } from '../errors.js';
import { familyPressureTable } from '../tables.js';
import { inPsi } from './known-figures.js';
import { ofFamily, rangePressure } from './load-range.js';
import { tableLetter } from './published-rows.js';
import type { Tire } from './tire.js';

export interface AtPressure<P extends Derived<'psi'> | undefined = Derived<'psi'>> {
  readonly pressure: P;
  readonly decisions: readonly Decision[];
}

/** The family pressure of the load range as it is printed: in kilopascals, and in psi. */
const printedFor = keptFor((d): { readonly psi: Derived<'psi'>; readonly fromKPa: Derived<'psi'> } | undefined => {
  const letter = tableLetter(d);
  const row = familyPressureTable.rows.find(([family, at]) => family === d.family && at === letter);
  return row && { psi: ofFamily(row, []).pressure, fromKPa: inUnit(constant(kPa(row[3])), 'psi') };
});

/**
 * A pressure given as the kilopascals printed with the family pressure of the load range is that pressure: a sidewall
 * that says 550 kPa says 80 psi, where the conversion gives 79.77.
 */
export function asPrinted(d: Designation, pressure: Derived<'psi'>): AtPressure {
  const printed = printedFor(d);
  if (printed === undefined) return { pressure, decisions: [] };
  const same = decide(pressure, '=', printed.fromKPa);
  return { pressure: same.holds ? printed.psi : pressure, decisions: [same] };
}

/** The pressure molded into the tire, when known. */
export function moldedPressure(tire: Tire, d: Designation): Either<TiresError, AtPressure<Derived<'psi'> | undefined>> {
  if (tire.molded?.pressure === undefined) return right({ pressure: undefined, decisions: [] });
  const molded = inPsi('molded pressure', tire.molded.pressure, 'label');
  return isLeft(molded) ? molded : right(asPrinted(d, molded.right));
}

/** The pressure at which the rating holds: molded, else that of the load range. */
export function ratedPressure(tire: Tire, d: Designation): Either<TiresError, AtPressure> {
  const molded = moldedPressure(tire, d);
  if (isLeft(molded)) return molded;
  const { pressure, decisions } = molded.right;
  if (pressure !== undefined) return right({ pressure, decisions });
  const letter = tableLetter(d);
  if (letter === undefined) return left({ chapter: 'tires', tag: 'LoadRangeNeeded', designation: showDesignation(d) });
  const found = rangePressure(d.family, letter, d);
  return isLeft(found) ? found : right({ pressure: found.right.pressure, decisions });
}
