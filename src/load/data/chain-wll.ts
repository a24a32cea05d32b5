/** Working load limits of chain as the rule prints them, by size and grade. lb and kg are both printed; neither is converted. */
import type { Table } from '../../trace/index.js';

export type ChainGrade = '30' | '43' | '70' | '80' | '100';

export interface ChainRow {
  /** Nominal size as printed, in inches and mm. */
  readonly inches: string;
  readonly mm: string;
  readonly grade: ChainGrade;
  readonly kg: string;
  readonly lb: string;
}

type Printed = readonly [mm: string, inches: string, grade: ChainGrade, kg: string, lb: string];

/** Grade 80 at 5/16 in stands below grade 70 in print, and is kept so. No row is printed for 7/16 in above grade 70. */
const printed: readonly Printed[] = [
  ['7', '1/4', '30', '580', '1300'],
  ['7', '1/4', '43', '1180', '2600'],
  ['7', '1/4', '70', '1430', '3150'],
  ['7', '1/4', '80', '1570', '3500'],
  ['7', '1/4', '100', '1950', '4300'],
  ['8', '5/16', '30', '860', '1900'],
  ['8', '5/16', '43', '1770', '3900'],
  ['8', '5/16', '70', '2130', '4700'],
  ['8', '5/16', '80', '2000', '4500'],
  ['8', '5/16', '100', '2600', '5700'],
  ['10', '3/8', '30', '1200', '2650'],
  ['10', '3/8', '43', '2450', '5400'],
  ['10', '3/8', '70', '2990', '6600'],
  ['10', '3/8', '80', '3200', '7100'],
  ['10', '3/8', '100', '4000', '8800'],
  ['11', '7/16', '30', '1680', '3700'],
  ['11', '7/16', '43', '3270', '7200'],
  ['11', '7/16', '70', '3970', '8750'],
  ['13', '1/2', '30', '2030', '4500'],
  ['13', '1/2', '43', '4170', '9200'],
  ['13', '1/2', '70', '5130', '11300'],
  ['13', '1/2', '80', '5400', '12000'],
  ['13', '1/2', '100', '6800', '15000'],
  ['16', '5/8', '30', '3130', '6900'],
  ['16', '5/8', '43', '5910', '13000'],
  ['16', '5/8', '70', '7170', '15800'],
  ['16', '5/8', '80', '8200', '18100'],
  ['16', '5/8', '100', '10300', '22600'],
];

export const chainWll: Table<ChainRow> = {
  name: 'chain working load limits',
  source: { id: 'cfr-393-108', title: '49 CFR 393.108, tables to the section', edition: 'trade publisher reproduction, undated, and a 2005 copy of the agency table', clause: 'chain', grade: 'B' },
  authoritative: 'both: lb and kg are printed independently',
  rows: printed.map(([mm, inches, grade, kg, lb]) => ({ mm, inches, grade, kg, lb })),
};
