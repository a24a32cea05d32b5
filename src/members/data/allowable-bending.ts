/** Allowable bending stress by rule, ksi. Static building and bridge rules with bracing conditions; none has a factor for a moving vehicle. */
import type { Table } from '../../trace/index.js';
import type { AllowableRow } from '../stock/stock-rows.js';

export const allowableBending = {
  name: 'allowable bending stress',
  source: { id: 'allowable-bending', title: 'AISC ASD 1989, AISC 360 and AASHTO rules, secondary copies', grade: 'B' },
  authoritative: 'allowable stress in ksi',
  rows: [
    { rule: 'ASD 1989, compact, braced', expression: '0.66 Fy', a36: '23.76', grade50: '33.0', from: 'AISC ASD 1989 eq. F1-1, secondary copy', note: 'often quoted as 24' },
    { rule: 'ASD 1989, non-compact, braced', expression: '0.60 Fy', a36: '21.6', grade50: '30.0', from: 'AISC ASD 1989 eq. F1-5, secondary copy', note: 'often quoted as 22' },
    { rule: 'AISC 360 ASD, omega 1.67', expression: 'Mn/1.67', a36: '21.56', grade50: '29.94', from: 'AISC 360, secondary copy', note: 'stress form of Mn/1.67, true while Mn is Fy S' },
    { rule: 'AASHTO, for contrast', expression: '0.55 Fy', a36: '19.8', grade50: '27.5', from: 'structural program technical reference, 2006' },
  ],
} as const satisfies Table<AllowableRow>;
