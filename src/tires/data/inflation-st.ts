/** Load at pressure, ST sizes. Disagreeing prints are all kept. */
import type { InflationRow } from '../rows.js';

/** Source ST-1; R or D not stated. The 14 inch rows are printed as 195/80/14, 205/80/14 and 215/80/14 there, ST155/80R13 as ST115/80/13 (a misprint: the loads are those of 155/80). Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st1 = [
  ['ST155/80R13', 'B', '35', '880', ''],
  ['ST155/80R13', 'C', '50', '1100', ''],
  ['ST165/80R13', 'B', '35', '990', ''],
  ['ST165/80R13', 'C', '50', '1230', ''],
  ['ST175/80R13', 'B', '35', '1100', ''],
  ['ST175/80R13', 'C', '50', '1360', ''],
  ['ST185/80R13', 'B', '35', '1200', ''],
  ['ST185/80R13', 'C', '50', '1480', ''],
  ['ST195/75R14', 'B', '35', '1320', ''],
  ['ST195/75R14', 'C', '50', '1610', ''],
  ['ST205/75R14', 'B', '35', '1430', ''],
  ['ST205/75R14', 'C', '50', '1760', ''],
  ['ST205/75R14', 'D', '65', '2040', ''],
  ['ST215/75R14', 'B', '35', '1520', ''],
  ['ST215/75R14', 'C', '50', '1870', ''],
  ['ST205/75R15', 'B', '35', '1480', ''],
  ['ST205/75R15', 'C', '50', '1820', ''],
  ['ST205/75R15', 'D', '65', '2150', ''],
  ['ST225/75R15', 'B', '35', '1760', ''],
  ['ST225/75R15', 'C', '50', '2150', ''],
  ['ST225/75R15', 'D', '65', '2540', ''],
  ['ST225/75R15', 'E', '80', '2840', ''],
  ['ST215/80R16', 'B', '35', '1820', ''],
  ['ST215/80R16', 'C', '50', '2200', ''],
  ['ST215/80R16', 'D', '65', '2600', ''],
  ['ST215/80R16', 'E', '80', '2910', ''],
  ['ST235/80R16', 'B', '35', '2090', ''],
  ['ST235/80R16', 'C', '50', '2600', ''],
  ['ST235/80R16', 'D', '65', '3000', ''],
  ['ST235/80R16', 'E', '80', '3420', ''],
] as const satisfies readonly InflationRow[];

/** Source ST-2, radial, a whole row in steps of 5 psi. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st2 = [
  ['ST225/75R15', '', '15', '1060', ''],
  ['ST225/75R15', '', '20', '1260', ''],
  ['ST225/75R15', '', '25', '1430', ''],
  ['ST225/75R15', '', '30', '1600', ''],
  ['ST225/75R15', 'B', '35', '1760', ''],
  ['ST225/75R15', '', '40', '1880', ''],
  ['ST225/75R15', '', '45', '2020', ''],
  ['ST225/75R15', 'C', '50', '2150', ''],
  ['ST225/75R15', '', '55', '2270', ''],
  ['ST225/75R15', '', '60', '2380', ''],
  ['ST225/75R15', 'D', '65', '2540', ''],
] as const satisfies readonly InflationRow[];

/** Source ST-3, one chart for R and D, by load range. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st3 = [
  ['ST175/80-13', 'B', '35', '1100', ''],
  ['ST175/80-13', 'C', '50', '1360', ''],
  ['ST175/80-13', 'D', '65', '1610', ''],
  ['ST185/80-13', 'C', '50', '1480', ''],
  ['ST185/80-13', 'D', '65', '1725', ''],
  ['ST205/75-14', 'B', '35', '1430', ''],
  ['ST205/75-14', 'C', '50', '1760', ''],
  ['ST205/75-14', 'D', '65', '2100', ''],
  ['ST215/75-14', 'C', '50', '1870', ''],
  ['ST205/75-15', 'B', '35', '1480', ''],
  ['ST205/75-15', 'C', '50', '1820', ''],
  ['ST205/75-15', 'D', '65', '2150', ''],
  ['ST225/75-15', 'C', '50', '2150', ''],
  ['ST225/75-15', 'D', '65', '2540', ''],
  ['ST225/75-15', 'E', '90', '2961', ''],
  ['ST235/80-16', 'D', '65', '3000', ''],
] as const satisfies readonly InflationRow[];

/**
 * Source ST-3, rows whose printed pressure is disputed and that answer nothing: two other pages print load range G at 110 psi and E at 80 psi for
 * these sizes, so the pressures very likely belong to the next letter. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire.
 */
export const st3Disputed = [
  ['ST235/80-16', 'E', '90', '3500', ''],
  ['ST235/85-16', 'E', '95', '3640', ''],
  ['ST235/85-16', 'F', '110', '3960', ''],
] as const satisfies readonly InflationRow[];

/** Source ST-4. The load range D rows stand under a heading of 50 psi and are read as 65. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st4 = [
  ['ST175/80R13', 'C', '50', '1360', ''],
  ['ST185/80R13', 'C', '50', '1480', ''],
  ['ST205/75R14', 'C', '50', '1760', ''],
  ['ST215/75R14', 'C', '50', '1870', ''],
  ['ST205/75R15', 'C', '50', '1820', ''],
  ['ST225/75R15', 'C', '50', '2150', ''],
  ['ST225/75R15', 'D', '65', '2540', ''],
  ['B78-13ST', 'C', '50', '1315', ''],
  ['C78-13ST', 'C', '50', '1410', ''],
  ['F78-14ST', 'C', '50', '1710', ''],
  ['G78-14ST', 'C', '50', '1865', ''],
  ['F78-15ST', 'C', '50', '1710', ''],
  ['H78-15ST', 'C', '50', '2035', ''],
  ['H78-15ST', 'D', '65', '2370', ''],
] as const satisfies readonly InflationRow[];

/** Source ST-5, beside a service description 117/112N. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st5 = [
  ['ST225/75R15', 'E', '80', '2830', '2470'],
] as const satisfies readonly InflationRow[];

/** Source ST-6, two pages of makers: one size and letter, two ratings. Columns: size as printed, load range or version, psi, single load lb, dual load lb a tire; empty where nothing is printed. */
export const st6 = [
  ['ST235/80R16', 'G', '110', '4080', ''],
  ['ST235/85R16', 'G', '110', '4080', ''],
  ['ST235/85R16', 'G', '110', '4400', ''],
] as const satisfies readonly InflationRow[];
