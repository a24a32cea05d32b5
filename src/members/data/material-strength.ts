/** Yield and tensile strength of structural steels, ksi. Ranges are printed as ranges. */
import type { Table } from '../../trace/index.js';
import type { StrengthRow } from '../stock/stock-rows.js';

export const materialStrength = {
  name: 'material strength',
  source: { id: 'materials-textbook', title: 'engineering materials textbook; trade-association articles, 2009 and 2013', grade: 'B', clause: 'Table 3.2' },
  authoritative: 'yield strength in ksi',
  rows: [
    { steel: 'A36', yield: '36', tensile: '58-80', note: 'plates, bars, angles, channels', tier: 'read' },
    { steel: 'A572 Gr 50', yield: '50', tensile: '65', tier: 'read' },
    { steel: 'A992', yield: '50-65', tensile: '65', note: 'the usual steel of W shapes', tier: 'read' },
    { steel: 'A529 Gr 50', yield: '50', tensile: '65-100', tier: 'read' },
    { steel: 'A53 Gr B', yield: '35', tensile: '60', note: 'pipe', tier: 'read' },
    { steel: 'A500 Gr B', yield: '42 round / 46 shaped', tensile: '58', note: 'HSS; these are the values of the 13th and 14th edition manuals', tier: 'read' },
    { steel: 'A500 Gr C', yield: '46 round / 50 shaped', tensile: '62', note: 'HSS', tier: 'read' },
    { steel: 'A1085', yield: '50', tensile: '65', note: 'HSS made to full wall, so the nominal wall is the design wall; both strengths from memory', tier: 'from-memory' },
  ],
} as const satisfies Table<StrengthRow>;
