/** How thin the flat parts of a cold-formed section may be, as width over thickness. From memory: read the text. */
import type { Table } from '../../trace/index.js';

/** A flat part: with one free edge, or held along both. */
export type FlatPart = 'one free edge' | 'web between two bends';

export interface SlendernessRow {
  readonly part: FlatPart;
  readonly clause: string;
  /** The greatest flat width over thickness. */
  readonly most: string;
  /** Plate buckling coefficient: of even pressure for a free edge, of pure bending for a web. */
  readonly k: string;
}

export const slendernessLimits = {
  name: 'flat width over thickness, cold-formed',
  source: { id: 'aisi-s100', title: 'AISI S100, North American specification for cold-formed steel members', edition: 'from memory', clause: 'dimensional limits; effective width of plates', grade: 'memory', note: 'a section beyond these is outside the text; within them thin parts still count only in part' },
  authoritative: 'greatest flat width over thickness',
  rows: [
    { part: 'one free edge', clause: 'unstiffened compression element', most: '60', k: '0.43' },
    { part: 'web between two bends', clause: 'unreinforced web', most: '200', k: '24' },
  ],
} as const satisfies Table<SlendernessRow>;
