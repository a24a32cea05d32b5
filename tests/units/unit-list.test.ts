/** The size of every unit, against a second source. `kg/lb` is a printing rule of tire tables, with a size by decree. */
import { describe, expect, it } from 'vitest';
import { allUnits, convert, dimensionOf, quantity, show, type Unit } from '../../src/units/index.js';
import { unitList } from '../../src/units/unit-list.js';
import { type Fraction, fraction, fractionOf } from '../helpers/fractions.js';

/**
 * As GNU Units 2.22 (definitions file of Debian 12) prints them to 15 digits, for one of the unit in kg, m, s, N, Pa. Its
 * definitions are those of NIST SP 811, appendix B; where that handbook prints a factor it does so to seven digits.
 */
const gnuUnits = `
lb 0.45359237
kg 1
t 1000
lbf 4.4482216152605
kip 4448.2216152605
N 1
kN 1000
in 0.0254
ft 0.3048
mi 1609.344
mm 0.001
cm 0.01
m 1
in2 0.00064516
ft2 0.09290304
m2 1
in3 0.000016387064
ft3 0.028316846592
gal 0.003785411784
in4 0.0000004162314256
psi 6894.75729316836
ksi 6894757.29316836
kPa 1000
bar 100000
mph 0.44704
km/h 0.277777777777778
lb/ft 1.48816394356955
lb/in 17.8579673228346
kg/m 1
lb/ft2 4.88242763638305
kg/m2 1
lb/ft3 16.0184633739601
lb/in3 27679.9047102031
lb/gal 119.826427316897
kg/m3 1
lb*in 0.011521246198
lb*ft 0.138254954376
kg*m 1
lb*in2 0.0002926396534292
kg*m2 1
lbf*in 0.112984829027617
lbf*ft 1.3558179483314
N*m 1
lbf/in 175.126835246476
lbf/ft 14.5939029372064
kN/m 1000
lbf*in2 0.00286981465730146
lbf*in3 0.0000728932922954572
g 9.80665
ft/s2 0.3048
m/s2 1
kg/lb 1
in3*ft/lb 0.0000110115986016255
ft/s 0.3048
ft2/s2 0.09290304
ratio 1
% 0.01
deg 1`
  .trim()
  .split('\n')
  .map((line) => line.split(' ') as [Unit, string]);

const sizeOf = (unit: Unit): Fraction => fractionOf(unitList[unit][1]).div(fractionOf(unitList[unit][2]));

/** A positive fraction written to so many significant digits, halves away from zero. */
function significant({ n: top, d: bottom }: Fraction, digits: number): string {
  const exponent = Number(Number(top) / Number(bottom))
    .toExponential(16)
    .split('e')[1];
  const places = BigInt(digits - 1) - BigInt(exponent as string);
  const [up, down] = places >= 0n ? [10n ** places, 1n] : [1n, 10n ** -places];
  const whole = (2n * top * up + bottom * down) / (2n * bottom * down);
  return Number(`${whole}e${-places}`).toPrecision(digits);
}

describe('definitions', () => {
  it('covers every unit, none twice', () => {
    expect(gnuUnits.map(([unit]) => unit).sort()).toEqual([...allUnits].sort());
  });
  it.each(gnuUnits)('%s is %s of the base unit', (unit, printed) => {
    expect(significant(sizeOf(unit), 15)).toBe(Number(printed).toPrecision(15));
  });
  it('states the three exact definitions digit for digit', () => {
    expect([unitList.lb[1], unitList.in[1], unitList.g[1]]).toEqual(['0.45359237', '0.0254', '9.80665']); // NIST SP 811, B.8
  });
  it('defines the pound-force by the pound and standard gravity', () => {
    expect(sizeOf('lbf')).toEqual(fraction(45359237n * 980665n, 10n ** 13n));
  });
  it('defines the gallon as 231 cubic inches', () => {
    expect(show(convert(quantity(1, 'gal'), 'in3'))).toBe('231 in3'); // NIST Handbook 44, appendix C
  });
  it('keeps twelve inches in a foot, 5,280 feet in a mile, 1,000 in every kilo', () => {
    expect(show(convert(quantity(1, 'ft'), 'in'))).toBe('12 in');
    expect(show(convert(quantity(1, 'mi'), 'ft'))).toBe('5,280 ft');
    expect(show(convert(quantity(1, 'kip'), 'lbf'))).toBe('1,000 lbf');
    expect(show(convert(quantity(1, 't'), 'kg'))).toBe('1,000 kg');
  });
  it('gives every unit a dimension that others share or that stands alone on purpose', () => {
    const alone = allUnits.filter(
      (unit) => allUnits.filter((other) => dimensionOf(other) === dimensionOf(unit)).length === 1,
    );
    expect(alone.sort()).toEqual(['deg', 'ft2/s2', 'in3*ft/lb', 'in4', 'kg/lb', 'lbf*in2', 'lbf*in3']);
  });
});
