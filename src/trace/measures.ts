/**
 * Inputs of functions: any unit of their dimension, with or without their working. What is calculated in pounds and inches
 * is converted to them by a recorded step.
 */
import type { UnitOf } from '../units/index.js';
import type { Basis } from './basis.js';
import { asDerived } from './leaves.js';
import type { Derived, Known } from './node.js';
import { converted } from './record.js';

/** A weight in any unit of weight. */
export type AnyWeight = Known<UnitOf<'mass'>>;
/** A length in any unit of length. */
export type AnyLength = Known<UnitOf<'length'>>;
/** A share: `ratio('0.12')` or `percent(12)`. */
export type AnyShare = Known<UnitOf<'ratio'>>;
/** An angle. */
export type AnyAngle = Known<UnitOf<'angle'>>;
/** A moment of a weight in any unit of it. */
export type AnyMoment = Known<UnitOf<'weight moment'>>;
/** A density in any unit. */
export type AnyDensity = Known<UnitOf<'density'>>;
/** A pressure or a stress in any unit. */
export type AnyPressure = Known<UnitOf<'pressure'>>;
/** A weight per length in any unit: of a member, or a spring rate. */
export type AnyLineWeight = Known<UnitOf<'weight per length'>>;
/** A weight per area in any unit. */
export type AnyAreaWeight = Known<UnitOf<'weight per area'>>;

/**
 * What does this weigh in pounds?
 *
 * The figure itself when it is in lb; otherwise a recorded conversion.
 *
 * @param symbol its name in formulas
 * @param weight in lb, kg or t
 * @param basis what a figure without working rests on
 * @example inPounds('machine weight', kg('453.59237')) // 1,000 lb
 * @source NIST SP 811, appendix B (1 lb = 0.45359237 kg)
 */
export const inPounds = (symbol: string, weight: AnyWeight, basis?: Basis): Derived<'lb'> =>
  converted(symbol, asDerived(symbol, weight, basis), 'lb');

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
export const inInches = (symbol: string, length: AnyLength): Derived<'in'> =>
  converted(symbol, asDerived(symbol, length), 'in');

/** The same in feet, for rules and tables that print feet. @example inFeet('deck', inch(240)) // 20 ft */
export const inFeet = (symbol: string, length: AnyLength): Derived<'ft'> =>
  converted(symbol, asDerived(symbol, length), 'ft');

/** A share of one, from a ratio or a percentage. @example inShare('tongue share', percent(12)) // 0.12 */
export const inShare = (symbol: string, share: AnyShare): Derived<'ratio'> =>
  converted(symbol, asDerived(symbol, share), 'ratio');

/** A pressure or stress in psi. Exact: 550 kPa is 79.77 psi, though sidewalls print it beside 80. @example inPsi('pressure', ksi(50)) // 50,000 psi */
export const inPsi = (symbol: string, pressure: AnyPressure, basis?: Basis): Derived<'psi'> =>
  converted(symbol, asDerived(symbol, pressure, basis), 'psi');

/** An angle in degrees. @example inDegrees('ramp angle', degree(12)) // 12 deg */
export const inDegrees = (symbol: string, angle: AnyAngle): Derived<'deg'> =>
  converted(symbol, asDerived(symbol, angle), 'deg');

/** A spring rate in pounds per inch of travel. @example inPoundsPerInch('spring rate', lbPerInch(2200)) // 2,200 lb/in */
export const inPoundsPerInch = (symbol: string, rate: AnyLineWeight): Derived<'lb/in'> =>
  converted(symbol, asDerived(symbol, rate), 'lb/in');

/** A weight per running foot in lb/ft. @example inPoundsPerFoot('crossmember', quantity('0.4', 'lb/in')) // 4.8 lb/ft */
export const inPoundsPerFoot = (symbol: string, weight: AnyLineWeight): Derived<'lb/ft'> =>
  converted(symbol, asDerived(symbol, weight), 'lb/ft');

/** A density in pounds per cubic foot. @example inPoundsPerCubicFoot('steel', lbPerFt3(490)) // 490 lb/ft3 */
export const inPoundsPerCubicFoot = (symbol: string, density: AnyDensity): Derived<'lb/ft3'> =>
  converted(symbol, asDerived(symbol, density), 'lb/ft3');

/** A weight per area in pounds per square foot. @example inPoundsPerSquareFoot('plate', lbPerFt2('10.2')) // 10.2 lb/ft2 */
export const inPoundsPerSquareFoot = (symbol: string, weight: AnyAreaWeight): Derived<'lb/ft2'> =>
  converted(symbol, asDerived(symbol, weight), 'lb/ft2');
