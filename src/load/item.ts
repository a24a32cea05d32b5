/** Something with a weight and a place: a part of the trailer, a machine, a toolbox; or a trailer known by its two scale readings. */
import { converted, type Derived, type Known, known } from '../trace/index.js';
import type { UnitOf } from '../units/index.js';

type Mass = UnitOf<'mass'>;
type Length = UnitOf<'length'>;

/** Known by where its centre of gravity stands, behind the coupler. */
export interface PlacedItem {
  readonly name: string;
  readonly weight: Known<Mass>;
  readonly at: Known<Length>;
}

/** Known by what it puts on the coupler when it stands alone: the trailer as weighed. */
export interface CoupledItem {
  readonly name: string;
  readonly weight: Known<Mass>;
  readonly tongue: Known<Mass>;
}

export type Item = PlacedItem | CoupledItem;

/**
 * What does this weigh in pounds?
 *
 * The figure itself when it is in lb; otherwise a recorded conversion.
 *
 * @param symbol its name in formulas
 * @param weight in lb, kg or t
 * @example inPounds('machine weight', kg('453.59237')) // 1,000 lb
 * @source NIST SP 811, appendix B (1 lb = 0.45359237 kg)
 */
export const inPounds = (symbol: string, weight: Known<Mass>): Derived<'lb'> =>
  converted(symbol, known(symbol, weight) as Derived<'kg'>, 'lb');

/**
 * How long is this in inches?
 *
 * The figure itself when it is in inches; otherwise a recorded conversion.
 *
 * @param symbol its name in formulas
 * @param length in any unit of length
 * @example inInches('front face', mm(2540)) // 100 in
 * @source NIST SP 811, appendix B (1 in = 25.4 mm)
 */
export const inInches = (symbol: string, length: Known<Length>): Derived<'in'> =>
  converted(symbol, known(symbol, length) as Derived<'mm'>, 'in');
