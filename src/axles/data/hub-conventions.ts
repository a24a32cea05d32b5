/** Bearings and bolt circles usually met on an axle of a rating. Nothing may be inferred the other way round. */
import type { Grade, Table } from '../../trace/index.js';

export interface HubRow {
  /** Axle rating, or a range of it, lb. */
  readonly axleLb: string;
  readonly innerBearing: string;
  readonly outerBearing: string;
  readonly bearingGrade: Grade;
  /** Studs and circle, inches: `5-4.5`. From memory. */
  readonly boltCircles: readonly string[];
  readonly boltCircleGrade: Grade;
}

export const hubConventions = {
  name: 'hub conventions',
  source: { id: 'hub-conventions', title: 'two web pages; makers vary', grade: 'C', note: 'bolt circle, bearing, brake and wheel capacity are independent facts: never infer capacity from a bolt circle' },
  authoritative: 'bearing numbers as printed',
  rows: [
    { axleLb: '2000-2200', innerBearing: 'L44649', outerBearing: 'L44649', bearingGrade: 'C', boltCircles: ['4-4', '5-4.5'], boltCircleGrade: 'memory' },
    { axleLb: '3500', innerBearing: 'L68149', outerBearing: 'L44649', bearingGrade: 'C', boltCircles: ['5-4.5', '5-4.75', '5-5'], boltCircleGrade: 'memory' },
    { axleLb: '5200-6000', innerBearing: '25580', outerBearing: '15123', bearingGrade: 'C', boltCircles: ['6-5.5'], boltCircleGrade: 'memory' },
    { axleLb: '7000', innerBearing: '25580', outerBearing: '14125A', bearingGrade: 'C', boltCircles: ['8-6.5'], boltCircleGrade: 'memory' },
  ],
} as const satisfies Table<HubRow>;
