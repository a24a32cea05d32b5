/** Figures in the units a reader wants, for printing: what is computed keeps its own. */
import { convert } from './convert.js';
import type { Quantity } from './quantity.js';
import { dimensionOf, type Unit } from './unit-list.js';

/** The units a page is printed in: feet, inches and pounds, or metres, millimetres and kilograms. Rules and moldings keep the unit they are printed in. */
export type ReaderUnits = 'us' | 'metric';

/** What a figure becomes in metric units, by what it measures; a figure of another kind stays as it is. */
function inMetric(q: Quantity<Unit>): Quantity<Unit> {
  switch (dimensionOf(q.unit)) {
    case 'mass':
      return convert(q as Quantity<'lb'>, 'kg');
    case 'length':
      return convert(q as Quantity<'in'>, 'mm');
    case 'pressure':
      return convert(q as Quantity<'psi'>, 'kPa');
    case 'weight per length':
      return convert(q as Quantity<'lb/in'>, 'kg/m');
    case 'weight moment':
      return convert(q as Quantity<'lb*in'>, 'kg*m');
    case 'inertia':
      return convert(q as Quantity<'lb*in2'>, 'kg*m2');
    case 'speed':
      return convert(q as Quantity<'mph'>, 'km/h');
    case 'force':
      return convert(q as Quantity<'lbf'>, 'kN');
    case 'moment':
      return convert(q as Quantity<'lbf*in'>, 'N*m');
    default:
      return q;
  }
}

/**
 * What is this figure in the units of the reader?
 *
 * Not rounded, and for print only: pounds and inches stay unchanged for `us`, and so does a figure of a dimension that
 * has no metric unit here.
 *
 * @param q any figure
 * @param units `us` or `metric`
 * @returns the same figure; for `metric` in kg, mm, kPa, kg/m, kg*m, kg*m2, km/h, kN or N*m
 * @example show(inReaderUnits(lb(1000), 'metric')) // 453.59237 kg
 * @source the definitions of the units
 */
export const inReaderUnits = (q: Quantity<Unit>, units: ReaderUnits): Quantity<Unit> =>
  units === 'metric' ? inMetric(q) : q;
