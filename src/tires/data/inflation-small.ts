/** Load at pressure, small trailer and low-platform sizes. */
import type { InflationRow } from '../rows.js';

/** Source ST-3. A second copy prints 1300 for 205/65-10 D. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st3Small = [
  ['4.80/4.00-8', 'B', '60', '590', ''],
  ['4.80/4.00-8', 'C', '90', '760', ''],
  ['5.70-8', 'B', '50', '715', ''],
  ['5.70-8', 'C', '75', '910', ''],
  ['5.70-8', 'D', '100', '1075', ''],
  ['165/65-8', 'C', '70', '800', ''],
  ['215/60-8', 'C', '50', '935', ''],
  ['215/60-8', 'D', '70', '1165', ''],
  ['6.90/6.00-9', 'C', '60', '1298', ''],
  ['205/50-10', 'B', '30', '665', ''],
  ['205/65-10', 'B', '35', '910', ''],
  ['205/65-10', 'C', '50', '1100', ''],
  ['205/65-10', 'D', '70', '1330', ''],
  ['205/65-10', 'E', '90', '1650', ''],
  ['4.80-12', 'B', '60', '785', ''],
  ['4.80-12', 'C', '90', '990', ''],
  ['5.30-12', 'B', '55', '840', ''],
  ['5.30-12', 'C', '80', '1045', ''],
  ['5.30-12', 'D', '105', '1250', ''],
  ['145/80-12', 'D', '65', '1220', ''],
  ['145/80-12', 'E', '80', '1520', ''],
  ['8-14.5MH', 'E', '85', '2540', ''],
  ['8-14.5MH', 'G', '116', '3070', ''],
  ['7.00-15LT', 'E', '70', '2403', ''],
] as const satisfies readonly InflationRow[];

/** Source ST-7; it prints ply ratings 4 and 6, which are B and C. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st7 = [
  ['205/50-10', 'B', '30', '675', ''],
  ['205/65-10', 'B', '35', '910', ''],
  ['205/65-10', 'C', '50', '1105', ''],
  ['215/50-12', 'B', '35', '950', ''],
] as const satisfies readonly InflationRow[];

/** From memory: letter and pressure too. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const memory = [
  ['215/75R17.5', 'H', '125', '4805', '4540'],
  ['235/75R17.5', 'J', '125', '6005', '5675'],
] as const satisfies readonly InflationRow[];
