/** What a combination must do when it brakes, by the kind of vehicle: property-carrying rows of the table. From memory: read the text in force. */
import type { Table } from '../../trace/index.js';

/** The kinds of property-carrying vehicle that the table tells apart. */
export type BrakedKind =
  | 'single unit of 10,000 lb GVWR or less'
  | 'single unit above 10,000 lb GVWR, or two axles with a trailer of 3,000 lb GVWR or less'
  | 'any other combination';

export interface BrakePerformanceRow {
  readonly clause: string;
  readonly kind: BrakedKind;
  /** Braking force, percent of the weight of vehicle or combination. */
  readonly forcePercent: string;
  /** Deceleration, ft/s2. */
  readonly deceleration: string;
  /** Application and braking distance from 20 mph with the service brakes, ft. */
  readonly serviceFt: string;
  /** The same with the emergency brakes, ft. */
  readonly emergencyFt: string;
}

export const brakePerformance = {
  name: 'vehicle brake performance, property-carrying',
  source: { id: 'cfr-393-52-d', title: '49 CFR 393.52', clause: '(d), table, part B', edition: 'from memory', grade: 'memory', note: 'binds commercial vehicles; 20 mph, dry hard level surface free of loose material' },
  authoritative: 'each column is printed; force in percent of gross weight governs here',
  rows: [
    { clause: 'B(1)', kind: 'single unit of 10,000 lb GVWR or less', forcePercent: '52.8', deceleration: '17', serviceFt: '25', emergencyFt: '66' },
    { clause: 'B(2)', kind: 'single unit above 10,000 lb GVWR, or two axles with a trailer of 3,000 lb GVWR or less', forcePercent: '43.5', deceleration: '14', serviceFt: '35', emergencyFt: '85' },
    { clause: 'B(3)', kind: 'any other combination', forcePercent: '43.5', deceleration: '14', serviceFt: '40', emergencyFt: '90' },
  ],
} as const satisfies Table<BrakePerformanceRow>;
