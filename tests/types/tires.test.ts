/** Lines about tires that must not compile. */
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { checkRimPressure, estimateLoadAtPressure, loadAtPressure, pressureForLoad, type SpeedInformation, tireLoadRating } from '../../src/tires/index.js';
import { inch, lb, psi } from '../../src/units/index.js';

// each function is only compiled, never called
const mustNotCompile = [
  // @ts-expect-error a load is not a pressure
  () => loadAtPressure('ST225/75R15', lb(65), 'single'),
  // @ts-expect-error a pressure is not a load
  () => pressureForLoad('ST225/75R15', psi(65), 'single'),
  // @ts-expect-error how the tire is fitted is never assumed
  () => loadAtPressure('ST225/75R15', psi(65)),
  // @ts-expect-error axles are not a fitment
  () => loadAtPressure('ST225/75R15', psi(65), 'tandem'),
  // @ts-expect-error what the tire runs on is never assumed
  () => tireLoadRating({ designation: 'ST225/75R15' }, { fitment: 'single' }),
  // @ts-expect-error a molded load is a weight
  () => tireLoadRating({ designation: 'ST225/75R15', molded: { single: inch(3) } }, { fitment: 'single', on: 'trailer' }),
  // @ts-expect-error a rated load without its pressure says nothing about another pressure
  () => estimateLoadAtPressure('ST225/75R15', { load: lb(2540) }, psi(50)),
  // @ts-expect-error a wheel's pressure limit is a pressure
  () => checkRimPressure(psi(65), lb(2540)),
  // @ts-expect-error speed information holds no load that could stand for a rating
  (information: SpeedInformation) => information.load,
];

describe('types', () => {
  it('refuse the lines above, and let a right one through', () => {
    expect(mustNotCompile).toHaveLength(9);
    expect(isRight(loadAtPressure('ST225/75R15 LRD', psi(65), 'single'))).toBe(true);
  });
});
