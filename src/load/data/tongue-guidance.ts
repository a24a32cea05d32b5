/** Tongue shares as various texts advise them: parameter sets, not law. */
import type { Grade, Table } from '../../trace/index.js';

export interface TongueGuidanceRow {
  readonly lowPercent: string;
  readonly highPercent: string;
  readonly appliesTo: string;
  readonly from: string;
  readonly grade: Grade;
}

type Printed = readonly [low: string, high: string, appliesTo: string, from: string, grade: Grade];

const printed: readonly Printed[] = [
  ['10', '15', 'conventional hitch, US and Canada', 'encyclopedia summary', 'C'],
  ['10', '15', 'ball hitch', 'tow-vehicle owner manuals (four makes)', 'B'],
  ['9', '11', 'ball hitch', 'tow-vehicle owner manuals (two makes)', 'B'],
  ['10', '10', 'weight-carrying hitch', 'tow-vehicle owner manuals (1994, 1998)', 'B'],
  ['12', '12', 'weight-distributing hitch', 'tow-vehicle owner manuals (1994, 1998)', 'B'],
  ['7', '10', 'light open trailers', 'trailer maker FAQ (name withheld)', 'C'],
  ['20', '25', 'gooseneck and fifth wheel', 'trailer maker manual (name withheld)', 'B'],
  ['15', '25', 'fifth wheel and gooseneck pin', 'tow-vehicle owner manual', 'B'],
  ['20', '20', 'fifth-wheel test condition attributed to SAE J2807 by a magazine', 'truck magazine, 2012', 'B'],
  ['5', '7', 'European caravans', 'national trade-body towing guide (GB)', 'B'],
  ['4', '7', 'EU and UK nose weight, never below 25 kg', 'tow-vehicle owner manual (GB, 2019)', 'B'],
  ['6', '10', 'Australian caravans, 7 minimum advised', 'two web pages', 'C'],
  ['15', '15', 'SAE J2807 fifth-wheel test condition as commonly quoted; conflicts with 20', 'from memory', 'memory'],
];

export const tongueGuidance: Table<TongueGuidanceRow> = {
  name: 'tongue guidance',
  authoritative: 'percent of the loaded trailer weight',
  source: { id: 'tongue-guidance', title: 'Tongue guidance of manuals and guides, row by row', grade: 'B', note: 'guidance, not law' },
  rows: printed.map(([lowPercent, highPercent, appliesTo, from, grade]) => ({ lowPercent, highPercent, appliesTo, from, grade })),
};
