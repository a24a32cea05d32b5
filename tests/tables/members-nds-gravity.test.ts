/** NDS specific gravity: the printed rows a second time. Source: NDS Table 12.3.3A, reproduction. */
import { expect, it } from 'vitest';
import { ndsGravity } from '../../src/members/data/nds-gravity.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'species,gravity,densityAt12,densityAt15,densityAt19';
const printed = `
Southern Pine,0.55,36.28,36.74,37.33
Mixed Southern Pine,0.51,33.78,34.24,34.83
Douglas Fir-Larch,0.5,33.15,33.61,34.20
Douglas Fir-Larch (North),0.49,32.52,32.98,33.57
Douglas Fir-South,0.46,30.63,31.08,31.67
Hem-Fir,0.43,28.72,29.16,29.74
Spruce-Pine-Fir,0.42,28.08,28.52,29.10
Mixed Oak,0.68,44.27,44.69,45.23
Northern Red Oak,0.68,44.27,44.69,45.23
Red Oak,0.67,43.67,44.09,44.64
White Oak,0.73,47.29,47.69,48.19
`;

it('NDS specific gravity: every row and figure as printed', () => {
  expect(pickColumns(ndsGravity.rows, columns)).toEqual(readLines(columns, printed));
});
