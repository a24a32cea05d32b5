/** Load range letters and ply ratings, both ways. */
import type { LoadRangeLetter } from '../designation/designation.js';
import { loadRangeTable } from '../tables.js';

const plies = new Map(loadRangeTable.rows.map(([letter, ply]) => [letter, Number(ply)]));
const letters = new Map(loadRangeTable.rows.map(([letter, ply]) => [Number(ply), letter as LoadRangeLetter]));

export const plyOf = (letter: string): number | undefined => plies.get(letter);
export const letterOf = (ply: number): LoadRangeLetter | undefined => letters.get(ply);
