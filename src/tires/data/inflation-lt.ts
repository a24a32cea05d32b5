/** Load at pressure, LT metric and numeric, P-metric and truck sizes. */
import type { InflationRow } from '../rows.js';

/** Source LT-1. Dual loads are printed for the pair; half of it is here. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const lt1 = [
  ['LT235/85R16', '', '35', '1700', '1545'],
  ['LT235/85R16', '', '40', '1870', '1700'],
  ['LT235/85R16', '', '45', '2030', '1845'],
  ['LT235/85R16', 'C', '50', '2205', '2007.5'],
  ['LT235/85R16', '', '55', '2335', '2125'],
  ['LT235/85R16', '', '60', '2485', '2260'],
  ['LT235/85R16', 'D', '65', '2623', '2382.5'],
  ['LT235/85R16', '', '70', '2765', '2515'],
  ['LT235/85R16', '', '75', '2905', '2645'],
  ['LT235/85R16', 'E', '80', '3042', '2778'],
] as const satisfies readonly InflationRow[];

/** Source LT-2, bias. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const lt2 = [
  ['8.00-16.5', '', '30', '1360', '1195'],
  ['8.00-16.5', '', '35', '1490', '1310'],
  ['8.00-16.5', '', '40', '1610', '1415'],
  ['8.00-16.5', 'C', '45', '1765', '1520'],
  ['8.00-16.5', '', '50', '1840', '1620'],
  ['8.00-16.5', '', '55', '1945', '1710'],
  ['8.00-16.5', 'D', '60', '2040', '1825'],
  ['8.00-16.5', '', '65', '2145', '1885'],
  ['8.00-16.5', '', '70', '2240', '1970'],
  ['8.00-16.5', 'E', '75', '2335', '2040'],
] as const satisfies readonly InflationRow[];

/** Source LT-3, maximum only. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const lt3 = [
  ['LT235/85R16', 'E', '80', '3042', '2778'],
  ['LT245/75R16', 'E', '80', '3042', '2778'],
  ['LT255/85R16', 'E', '80', '3415', '3085'],
  ['LT265/75R16', 'E', '80', '3415', '3085'],
  ['LT285/75R16', 'E', '80', '3750', '3415'],
  ['LT305/70R16', 'E', '65', '3525', '3195'],
  ['LT315/75R16', 'E', '65', '3860', '3525'],
  ['LT255/75R17', 'C', '50', '2405', '2205'],
] as const satisfies readonly InflationRow[];

/** Source LT-5, quoted beside ST225/75R15 C. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const lt5 = [
  ['LT225/75R15', 'C', '50', '1875', ''],
] as const satisfies readonly InflationRow[];

/** Source PL-1; SL is a P-metric tire without a load marking. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const pl1 = [
  ['P235/75R15', 'SL', '35', '2028', ''],
  ['P235/75R15', 'XL', '41', '2183', ''],
  ['LT255/70R16', 'C', '50', '2205', ''],
  ['LT265/75R16', 'D', '65', '3000', ''],
  ['LT245/75R16', 'E', '80', '3042', ''],
] as const satisfies readonly InflationRow[];

/** Source TR-2. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const tr2 = [
  ['295/75R22.5', 'G', '100', '5780', '5675'],
  ['295/75R22.5', 'G', '85', '', '5000'],
] as const satisfies readonly InflationRow[];
