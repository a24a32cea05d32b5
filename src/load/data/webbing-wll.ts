/** Working load limits of synthetic webbing as the rule prints them. lb and kg are both printed; neither is converted. */
import type { Table } from '../../trace/index.js';

export interface WebbingRow {
  /** Width as printed, in inches and mm. */
  readonly inches: string;
  readonly mm: string;
  readonly kg: string;
  readonly lb: string;
}

type Printed = readonly [mm: string, inches: string, kg: string, lb: string];

const printed: readonly Printed[] = [
  ['45', '1 3/4', '790', '1750'],
  ['50', '2', '910', '2000'],
  ['75', '3', '1360', '3000'],
  ['100', '4', '1810', '4000'],
];

export const webbingWll: Table<WebbingRow> = {
  name: 'webbing working load limits',
  source: { id: 'cfr-393-108', title: '49 CFR 393.108, tables to the section', edition: 'trade publisher reproduction, undated, and a 2005 copy of the agency table', clause: 'synthetic webbing', grade: 'B' },
  authoritative: 'both: lb and kg are printed independently',
  rows: printed.map(([mm, inches, kg, lb]) => ({ mm, inches, kg, lb })),
};
