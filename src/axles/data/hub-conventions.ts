/** Bearings and bolt circles usually met on an axle of a rating. Nothing may be inferred the other way round. */
import type { Grade, Table } from '../../trace/index.js';

export interface HubRow {
  readonly axleFromLb: string;
  readonly axleToLb: string;
  readonly innerBearing: string;
  readonly outerBearing: string;
  /** Studs and circle, inches: `5-4.5`. */
  readonly boltCircles: readonly { readonly circle: string; readonly grade: Grade }[];
}

export const hubConventions = {
  name: 'hub conventions',
  source: { id: 'hub-conventions', title: 'Web pages and trade parts pages on trailer hubs; makers vary', edition: 'undated', grade: 'C', note: 'bolt circle, bearing, brake and wheel capacity are independent facts: never infer capacity from a bolt circle; ends at 7,000 lb axles (one page prints 28682 / 25520 for 10,000 to 12,000 lb without inner and outer, and 25520 is a cup: not used)' },
  authoritative: 'bearing numbers as printed',
  rows: [
    { axleFromLb: '2000', axleToLb: '2200', innerBearing: 'L44649', outerBearing: 'L44649', boltCircles: [{ circle: '4-4', grade: 'memory' }, { circle: '5-4.5', grade: 'memory' }] },
    { axleFromLb: '3500', axleToLb: '3500', innerBearing: 'L68149', outerBearing: 'L44649', boltCircles: [{ circle: '5-4.5', grade: 'C' }, { circle: '5-4.75', grade: 'memory' }, { circle: '5-5', grade: 'memory' }] },
    { axleFromLb: '5200', axleToLb: '6000', innerBearing: '25580', outerBearing: '15123', boltCircles: [{ circle: '6-5.5', grade: 'C' }] },
    { axleFromLb: '7000', axleToLb: '7000', innerBearing: '25580', outerBearing: '14125A', boltCircles: [{ circle: '8-6.5', grade: 'memory' }] },
  ],
} as const satisfies Table<HubRow>;
