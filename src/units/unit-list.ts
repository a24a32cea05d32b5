/**
 * Every unit, what it measures, and its size in the base unit of that dimension as an exact fraction.
 *
 * Definitions: pound 0.45359237 kg, inch 25.4 mm, standard gravity 9.80665 m/s2 (NIST SP 811, appendix B; International
 * yard and pound agreement, 1959). US gallon 231 in3.
 */
type UnitRow = readonly [dimension: string, size: string, per: string];

export const unitList = {
  // mass, base kg
  lb: ['mass', '0.45359237', '1'],
  kg: ['mass', '1', '1'],
  t: ['mass', '1000', '1'],
  // force, base N
  lbf: ['force', '4.4482216152605', '1'],
  kip: ['force', '4448.2216152605', '1'],
  N: ['force', '1', '1'],
  kN: ['force', '1000', '1'],
  // length, base m
  in: ['length', '0.0254', '1'],
  ft: ['length', '0.3048', '1'],
  mi: ['length', '1609.344', '1'],
  mm: ['length', '0.001', '1'],
  cm: ['length', '0.01', '1'],
  m: ['length', '1', '1'],
  // area, base m2
  in2: ['area', '0.00064516', '1'],
  ft2: ['area', '0.09290304', '1'],
  m2: ['area', '1', '1'],
  // volume and section modulus, base m3
  in3: ['volume', '0.000016387064', '1'],
  ft3: ['volume', '0.028316846592', '1'],
  gal: ['volume', '0.003785411784', '1'],
  // second moment of area, base m4
  in4: ['second moment of area', '0.0000004162314256', '1'],
  // pressure and stress, base Pa
  psi: ['pressure', '4.4482216152605', '0.00064516'],
  ksi: ['pressure', '4448.2216152605', '0.00064516'],
  kPa: ['pressure', '1000', '1'],
  bar: ['pressure', '100000', '1'],
  // speed, base m/s
  mph: ['speed', '1609.344', '3600'],
  'km/h': ['speed', '1000', '3600'],
  'ft/s': ['speed', '0.3048', '1'],
  // a speed times a speed (stopping distance), base m2/s2
  'ft2/s2': ['speed squared', '0.09290304', '1'],
  // weight per length, base kg/m
  'lb/ft': ['weight per length', '0.45359237', '0.3048'],
  'lb/in': ['weight per length', '0.45359237', '0.0254'],
  'kg/m': ['weight per length', '1', '1'],
  // weight per area, base kg/m2
  'lb/ft2': ['weight per area', '0.45359237', '0.09290304'],
  'kg/m2': ['weight per area', '1', '1'],
  // density, base kg/m3
  'lb/ft3': ['density', '0.45359237', '0.028316846592'],
  'lb/in3': ['density', '0.45359237', '0.000016387064'],
  'lb/gal': ['density', '0.45359237', '0.003785411784'],
  'kg/m3': ['density', '1', '1'],
  // moment of a weight, base kg*m
  'lb*in': ['weight moment', '0.011521246198', '1'],
  'lb*ft': ['weight moment', '0.138254954376', '1'],
  'kg*m': ['weight moment', '1', '1'],
  // inertia, base kg*m2
  'lb*in2': ['inertia', '0.0002926396534292', '1'],
  'kg*m2': ['inertia', '1', '1'],
  // moment of a force, base N*m
  'lbf*in': ['moment', '0.1129848290276167', '1'],
  'lbf*ft': ['moment', '1.3558179483314004', '1'],
  'N*m': ['moment', '1', '1'],
  // force per length, base N/m
  'lbf/in': ['force per length', '4.4482216152605', '0.0254'],
  'lbf/ft': ['force per length', '4.4482216152605', '0.3048'],
  'kN/m': ['force per length', '1000', '1'],
  // bending stiffness and the moment of a moment area (beam deflection), base N*m2 and N*m3
  'lbf*in2': ['stiffness', '0.00286981465730146418', '1'],
  'lbf*in3': ['deflection moment', '0.000072893292295457190172', '1'],
  // section modulus for each weight per length, base m4/kg
  'in3*ft/lb': ['modulus per weight', '0.0000049947771072', '0.45359237'],
  // acceleration, base m/s2
  g: ['acceleration', '9.80665', '1'],
  'ft/s2': ['acceleration', '0.3048', '1'],
  'm/s2': ['acceleration', '1', '1'],
  // kilograms counted to one printed pound: a printing rule of tire tables (0.4536), not the definition of the pound
  'kg/lb': ['printed pound', '1', '1'],
  // plain numbers
  ratio: ['ratio', '1', '1'],
  '%': ['ratio', '1', '100'],
  deg: ['angle', '1', '1'],
} as const satisfies Record<string, UnitRow>;

type UnitList = typeof unitList;

/** The name of a unit: `'lb'`, `'in'`, `'lb/ft'` and so on. */
export type Unit = keyof UnitList;

/** What a unit measures: `'mass'`, `'length'`, `'pressure'` and so on. */
export type Dimension = UnitList[Unit][0];

/** The units of one dimension: `UnitOf<'mass'>` is `'lb' | 'kg' | 't'`. */
export type UnitOf<D extends Dimension> = { [U in Unit]: UnitList[U][0] extends D ? U : never }[Unit];

/** The units that may be converted into `U`. */
export type SameDimension<U extends Unit> = UnitOf<UnitList[U][0]>;

export const allUnits = Object.keys(unitList) as readonly Unit[];

/** What a unit measures. @example dimensionOf('psi') // pressure */
export function dimensionOf(unit: Unit): Dimension {
  return unitList[unit][0];
}

/** Whether a word is the name of a unit. @example isUnit('stone') // false */
export function isUnit(text: string): text is Unit {
  return Object.hasOwn(unitList, text);
}
