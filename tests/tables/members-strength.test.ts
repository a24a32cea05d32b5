/** material strength: the printed rows a second time. Source: engineering materials textbook, Table 3.2; trade-association articles. */
import { expect, it } from 'vitest';
import { materialStrength } from '../../src/members/data/material-strength.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'steel,yield,tensile,tier';
const printed = `
A36,36,58-80,read
A572 Gr 50,50,65,read
A992,50-65,65,read
A529 Gr 50,50,65-100,read
A53 Gr B,35,60,read
A500 Gr B,42 round / 46 shaped,58,read
A500 Gr C,46 round / 50 shaped,62,read
A1085,50,65,from-memory
`;

it('material strength: every row and figure as printed', () => {
  expect(pickColumns(materialStrength.rows, columns)).toEqual(readLines(columns, printed));
});
