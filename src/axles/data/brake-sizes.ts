/** Which drum brake usually sits on which axle: a convention of the trade, not a rating. The rating is on the brake's own sheet. */
import type { Table } from '../../trace/index.js';

export interface BrakeSizeRow {
  /** Drum diameter and shoe width, inches. */
  readonly size: string;
  readonly axleFromLb: string;
  readonly axleToLb: string;
}

export const brakeSizes = {
  name: 'usual brake sizes',
  source: { id: 'brake-sizes', title: 'Trade parts guide: usual electric drum brakes by axle rating', edition: 'undated', grade: 'C', note: 'a convention, no rating; ends at 10,000 lb axles' },
  authoritative: 'axle rating in pounds',
  rows: [
    { size: '10 x 2-1/4', axleFromLb: '2000', axleToLb: '3500' },
    { size: '12 x 2', axleFromLb: '5200', axleToLb: '7000' },
    { size: '12-1/4 heavy', axleFromLb: '8000', axleToLb: '10000' },
  ],
} as const satisfies Table<BrakeSizeRow>;
