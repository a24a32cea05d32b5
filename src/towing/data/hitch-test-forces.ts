/** Test forces for hitches: `force = slope x R + intercept`, R the gross weight rating of the trailer (that definition from memory). */
import type { Table } from '../../trace/index.js';

export interface HitchTestRow {
  readonly step: string;
  readonly hitch: 'weight carrying' | 'weight distributing';
  /** V vertical, L longitudinal, T transverse, M moment. */
  readonly component: 'V' | 'L' | 'T' | 'M';
  readonly slope: string;
  readonly intercept: string;
  /** The unit of the moment row is presumed: the print does not give one. */
  readonly unit: 'lb' | 'in-lb (presumed)';
  readonly direction: string;
}

export const hitchTestForceTable = {
  name: 'hitch test forces',
  source: { id: 'comar-11.13.08.10', title: 'Md. COMAR 11.13.08.10 table', edition: 'current to 2024-12-27', grade: 'A', note: 'R taken as the trailer gross weight rating: definition from memory' },
  authoritative: 'slope and intercept as printed',
  rows: [
    { step: '1', hitch: 'weight carrying', component: 'V', slope: '0.47', intercept: '480', unit: 'lb', direction: 'down' },
    { step: '1', hitch: 'weight carrying', component: 'L', slope: '0.47', intercept: '480', unit: 'lb', direction: 'compressive' },
    { step: '2', hitch: 'weight carrying', component: 'L', slope: '0.23', intercept: '1530', unit: 'lb', direction: 'tensile' },
    { step: '2', hitch: 'weight carrying', component: 'V', slope: '0.15', intercept: '0', unit: 'lb', direction: 'down' },
    { step: '3', hitch: 'weight carrying', component: 'L', slope: '0.23', intercept: '1530', unit: 'lb', direction: 'compressive' },
    { step: '3', hitch: 'weight carrying', component: 'V', slope: '0.15', intercept: '0', unit: 'lb', direction: 'down' },
    { step: '4', hitch: 'weight carrying', component: 'T', slope: '0.2', intercept: '500', unit: 'lb', direction: 'left' },
    { step: '5', hitch: 'weight carrying', component: 'T', slope: '0.2', intercept: '500', unit: 'lb', direction: 'right' },
    { step: '1', hitch: 'weight distributing', component: 'V', slope: '0.045', intercept: '1650', unit: 'lb', direction: 'down' },
    { step: '1', hitch: 'weight distributing', component: 'M', slope: '0', intercept: '51000', unit: 'in-lb (presumed)', direction: 'figure 2' },
    { step: '2', hitch: 'weight distributing', component: 'L', slope: '0.067', intercept: '2070', unit: 'lb', direction: 'tensile' },
    { step: '2', hitch: 'weight distributing', component: 'V', slope: '0.15', intercept: '0', unit: 'lb', direction: 'down' },
    { step: '3', hitch: 'weight distributing', component: 'L', slope: '0.067', intercept: '2070', unit: 'lb', direction: 'compressive' },
    { step: '3', hitch: 'weight distributing', component: 'V', slope: '0.15', intercept: '0', unit: 'lb', direction: 'down' },
    { step: '4', hitch: 'weight distributing', component: 'T', slope: '0.2', intercept: '500', unit: 'lb', direction: 'left' },
    { step: '5', hitch: 'weight distributing', component: 'T', slope: '0.2', intercept: '500', unit: 'lb', direction: 'right' },
  ],
} as const satisfies Table<HitchTestRow>;
