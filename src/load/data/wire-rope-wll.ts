/** Working load limits of wire rope as the rule prints them. lb and kg are both printed; neither is converted. */
import type { Table } from '../../trace/index.js';

export interface WireRopeRow {
  /** Diameter as printed, in inches and mm. */
  readonly inches: string;
  readonly mm: string;
  readonly kg: string;
  readonly lb: string;
}

type Printed = readonly [mm: string, inches: string, kg: string, lb: string];

/** Rows for 7/8 and 1 in exist in print; every copy that was read is cut before them. */
const printed: readonly Printed[] = [
  ['7', '1/4', '640', '1400'],
  ['8', '5/16', '950', '2100'],
  ['10', '3/8', '1360', '3000'],
  ['11', '7/16', '1860', '4100'],
  ['13', '1/2', '2400', '5300'],
  ['16', '5/8', '3770', '8300'],
  ['20', '3/4', '4940', '10900'],
];

export const wireRopeWll: Table<WireRopeRow> = {
  name: 'wire rope working load limits',
  source: { id: 'cfr-393-108', title: '49 CFR 393.108, tables to the section', edition: 'trade publisher reproduction, undated, and a 2005 copy of the agency table', clause: 'wire rope', grade: 'B' },
  authoritative: 'both: lb and kg are printed independently',
  rows: printed.map(([mm, inches, kg, lb]) => ({ mm, inches, kg, lb })),
};
