/** The forces cargo securement must stand, as shares of the cargo's weight; each direction applied by itself. */
import type { Table } from '../../trace/index.js';

export type Direction = 'forward' | 'rearward' | 'sideways';
/** What the force is held against. The two sets of shares are different tests and do not mix. */
export type SecurementBasis = 'breaking strength' | 'working load limit';

export interface SecurementRow {
  readonly basis: SecurementBasis;
  readonly direction: Direction;
  readonly g: string;
  readonly clause: string;
}

type Printed = readonly [basis: SecurementBasis, direction: Direction, g: string, clause: string];

const printed: readonly Printed[] = [
  ['breaking strength', 'forward', '0.8', '393.102(a)(1)'],
  ['breaking strength', 'rearward', '0.5', '393.102(a)(1)'],
  ['breaking strength', 'sideways', '0.5', '393.102(a)(1)'],
  ['working load limit', 'forward', '0.435', '393.102(a)(2)'],
  ['working load limit', 'rearward', '0.5', '393.102(a)(2)'],
  ['working load limit', 'sideways', '0.25', '393.102(a)(2)'],
];

export const securementForces: Table<SecurementRow> = {
  name: 'cargo securement forces',
  source: { id: 'cfr-393-102', title: '49 CFR 393.102', edition: 'agency rules page, undated copy', grade: 'A', address: 'http://www.fmcsa.dot.gov/rules-regulations/administration/fmcsr/fmcsrruletext.aspx?chunkKey=0901633480023950' },
  authoritative: 'g',
  rows: printed.map(([basis, direction, g, clause]) => ({ basis, direction, g, clause })),
};
