/** Estimates of the load at a lower pressure, where no table is printed. Never a rating. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  asDerived,
  constant,
  type Decision,
  type Derived,
  decide,
  given,
  type Known,
  over,
  power,
  rounded,
  times,
} from '../../trace/index.js';
import { lb, psi, ratio } from '../../units/index.js';
import { showCrossed, showInWords } from '../../units/internal.js';
import { sources } from '../data/sources.js';
import { designationOf } from '../designation/cache.js';
import type { Designation, TireFamily } from '../designation/designation.js';
import type { TiresError } from '../errors.js';
import { inPounds, inPsi } from './known-figures.js';

/** The maximum load of a tire and the cold pressure that belongs to it, both as molded. */
export interface RatedAt {
  readonly load: Known<'lb' | 'kg'>;
  readonly pressure: Known<'psi' | 'kPa'>;
}

export interface LoadEstimate {
  readonly load: Derived<'lb'>;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const estimateNote = note('Estimate', 'an estimate by a load-pressure exponent, not a printed load; it is no rating');

/** The exponent that claims no more than the tables of the family; small trailer sizes, tabulated by load range only, need more. */
const safeExponent = (family: TireFamily): string => (family === 'small trailer' ? '1.1' : '0.8');

/** No table of this chapter reaches lower. */
const lowestTabulated = constant(psi(15), 'lowest tabulated pressure', sources.safeExponent);

/**
 * About what may a tire carry at less than its rated pressure, when no table prints it?
 *
 * `L = Lmax x (p / pmax)^n`, rounded down to 10 lb: Lmax the rated load at pmax, p the cold pressure, n the load-pressure
 * exponent, 0.8 (1.1 for small trailer sizes) unless the caller gives another.
 *
 * Error: with these exponents, and rounded down, it claims no more than any tabulated row of this chapter, and too little by
 * up to 26 % (ST metric, at 15 of 65 psi), 8 % (LT metric), 18 % (LT numeric bias), 13 % (LT flotation), 36 % (small trailer).
 * A smaller n comes nearer and is unsafe: 0.5 claims up to 19 % more than the LT metric table. Families without a table rest
 * on the same 0.8. Not above the rated pressure, and no substitute for a table: see `loadAtPressure`.
 *
 * @param designation from the sidewall; its family chooses the exponent
 * @param rated maximum load and its cold pressure, from the sidewall, in lb or kg, psi or kPa
 * @param pressure the cold pressure run, in psi or kPa
 * @param exponent another n, with its own basis
 * @returns lb, basis estimated; Left `UnreadableDesignation`, `NotPositive`, `PressureAboveRated`
 * @example estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(50)) // Right: 2,050 lb; a table prints 2,150
 * @source derived from the tables of this chapter; exponent 0.8 also a secondary reading of a European formula, grade C
 */
export function estimateLoadAtPressure(
  designation: string | Designation,
  rated: RatedAt,
  pressure: Known<'psi' | 'kPa'>,
  exponent?: Known<'ratio'>,
): Either<TiresError, LoadEstimate> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const most = inPounds('rated load', rated.load, 'label');
  if (isLeft(most)) return most;
  const ratedPressure = inPsi('rated pressure', rated.pressure, 'label');
  if (isLeft(ratedPressure)) return ratedPressure;
  const run = inPsi('cold pressure', pressure);
  if (isLeft(run)) return run;
  const n =
    exponent === undefined
      ? given('load-pressure exponent', ratio(safeExponent(read.right.family)), 'estimated')
      : asDerived('load-pressure exponent', exponent, 'estimated');
  const positive = decide(n, '>', constant(ratio(0)));
  if (!positive.holds)
    return left({ chapter: 'tires', tag: 'NotPositive', what: 'load-pressure exponent', found: showInWords(n.value) });
  const within = decide(run.right, '<=', ratedPressure.right);
  if (!within.holds) {
    const [asked, rated] = showCrossed(run.right.value, ratedPressure.right.value);
    return left({ chapter: 'tires', tag: 'PressureAboveRated', asked, rated });
  }
  const low = decide(run.right, '<', lowestTabulated);
  const share = power('share of the rated load', over(run.right, ratedPressure.right), n, sources.safeExponent);
  const load = rounded('estimated load at pressure', times(most.right, share), lb(10), 'down', sources.safeExponent);
  const notes = low.holds
    ? [
        estimateNote,
        note('BelowTables', 'the pressure is lower than any tabulated one, so the estimate is untested there'),
      ]
    : [estimateNote];
  return right({ load, notes, decisions: [positive, within, low] });
}
