/** Coupler classes and the strengths they must show. A strength is a printed force or a printed factor of the class weight. */
import type { Table } from '../../trace/index.js';

/** A printed strength: `lbf` as it stands, or `times` the maximum gross trailer weight. */
export type PrintedStrength = { readonly lbf: string } | { readonly times: string };

export interface CouplerClassRow {
  readonly couplerClass: '1' | '2' | '3' | '4';
  /** Maximum gross trailer weight above this, up to and including `maxLb`. */
  readonly overLb: string;
  readonly maxLb: string;
  /** Not printed for class 4: the ball is sized to the strength. */
  readonly ballIn?: string;
  readonly tension: PrintedStrength;
  readonly compression: PrintedStrength;
  readonly transverse: PrintedStrength;
  readonly verticalTension: PrintedStrength;
  readonly verticalCompression: PrintedStrength;
  /** Breaking strength of each chain, from two secondary pages on SAE J684; class 4 says the trailer GVWR. */
  readonly chainEachLb?: string;
}

export const couplerClasses = {
  name: 'coupler classes',
  source: {
    id: 'comar-11.13.08', title: 'Md. COMAR 11.13.08.04 (classes) and .10 (strengths)', edition: 'current through Register Vol. 51 No. 26, 2024-12-27', grade: 'A',
    note: 'old and new bounds are bracketed for classes 3 and 4; other copies print 1.3 for vertical compression of class 4; chains: two secondary pages citing SAE J684 (July 2005), grade C',
  },
  authoritative: 'pounds as printed',
  rows: [
    { couplerClass: '1', overLb: '0', maxLb: '2000', ballIn: '1.875', tension: { lbf: '6000' }, compression: { lbf: '6000' }, transverse: { lbf: '2000' }, verticalTension: { lbf: '2500' }, verticalCompression: { lbf: '2500' }, chainEachLb: '2000' },
    { couplerClass: '2', overLb: '2000', maxLb: '3500', ballIn: '2', tension: { lbf: '10500' }, compression: { lbf: '10500' }, transverse: { lbf: '3000' }, verticalTension: { lbf: '4500' }, verticalCompression: { lbf: '4500' }, chainEachLb: '3500' },
    { couplerClass: '3', overLb: '3500', maxLb: '5000', ballIn: '2', tension: { lbf: '15000' }, compression: { lbf: '15000' }, transverse: { lbf: '4000' }, verticalTension: { lbf: '7000' }, verticalCompression: { lbf: '7000' }, chainEachLb: '5000' },
    { couplerClass: '4', overLb: '5000', maxLb: '10000', tension: { times: '3.0' }, compression: { times: '3.0' }, transverse: { times: '1.0' }, verticalTension: { times: '1.3' }, verticalCompression: { times: '1.4' } },
  ],
} as const satisfies Table<CouplerClassRow>;
