/** The wheel under the tire: its greatest pressure, and the rim widths the tire allows. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Verdict } from '../ratings/index.js';
import { asDerived, converted, type Decision, type Derived, decide, difference, type Known } from '../trace/index.js';
import type { NotPositive } from './errors.js';
import { inPsi } from './load/known-figures.js';

/** A figure of the tire against a limit of the rim. Reserve zero is within. */
export interface RimCheck<U extends 'psi' | 'in'> {
  readonly what: string;
  readonly limit: Derived<U>;
  readonly figure: Derived<U>;
  readonly reserve: Derived<U>;
  readonly verdict: Verdict;
  readonly decisions: readonly Decision[];
}

function judge<U extends 'psi' | 'in'>(
  what: string,
  limit: Derived<U>,
  figure: Derived<U>,
  reserve: Derived<U>,
  within: Decision,
): RimCheck<U> {
  return { what, limit, figure, reserve, verdict: within.holds ? 'within' : 'over', decisions: [within] };
}

/**
 * Is the wheel rated for the cold pressure of the tire?
 *
 * `reserve = greatest pressure of the wheel - cold pressure`; within at zero or more.
 *
 * @param pressure the cold pressure of the tire, psi or kPa
 * @param greatest stamped on the wheel or in its maker's sheet, psi or kPa
 * @returns verdict and reserve in psi; Left `NotPositive`
 * @example checkRimPressure(psi(80), psi(65)) // Right: verdict 'over'
 * @source common practice, no source: a wheel's pressure limit is a limit
 */
export function checkRimPressure(
  pressure: Known<'psi' | 'kPa'>,
  greatest: Known<'psi' | 'kPa'>,
): Either<NotPositive, RimCheck<'psi'>> {
  const run = inPsi('cold pressure', pressure);
  if (isLeft(run)) return run;
  const limit = inPsi('greatest pressure of the wheel', greatest, 'label');
  if (isLeft(limit)) return limit;
  const reserve = difference('reserve, wheel pressure', limit.right, run.right);
  return right(
    judge(
      'wheel pressure limit against cold pressure',
      limit.right,
      run.right,
      reserve,
      decide(run.right, '<=', limit.right),
    ),
  );
}

/** The rim against both widths that the tire allows. */
export interface RimWidthChecks {
  readonly least: RimCheck<'in'>;
  readonly greatest: RimCheck<'in'>;
}

/**
 * Is the rim within the widths that the tire allows?
 *
 * Two checks: `rim - least width` and `greatest width - rim`; each within at zero or more.
 *
 * @param rim measured between the flanges, in or mm
 * @param allowed least and greatest rim width for the size, from the tire maker
 * @returns both checks, in inches
 * @example checkRimWidth(inch(6), { least: inch(6), greatest: inch(7) }) // both 'within'
 * @source 49 CFR 571.119 S5.1 (the tire maker publishes the rims), edition before 2003, copy, grade B
 */
export function checkRimWidth(
  rim: Known<'in' | 'mm'>,
  allowed: { readonly least: Known<'in' | 'mm'>; readonly greatest: Known<'in' | 'mm'> },
): RimWidthChecks {
  const inInches = (name: string, figure: Known<'in' | 'mm'>): Derived<'in'> =>
    converted<'in' | 'mm', 'in'>(`${name} in inches`, asDerived(name, figure, 'label'), 'in');
  const width = inInches('rim width', rim);
  const least = inInches('least rim width', allowed.least);
  const greatest = inInches('greatest rim width', allowed.greatest);
  return {
    least: judge(
      'least rim width',
      least,
      width,
      difference('reserve, least rim width', width, least),
      decide(least, '<=', width),
    ),
    greatest: judge(
      'greatest rim width',
      greatest,
      width,
      difference('reserve, greatest rim width', greatest, width),
      decide(width, '<=', greatest),
    ),
  };
}
