/** plate weights: the printed rows a second time. Source: derived, thickness x 490 lb/ft3 (Iowa DOT IM 569). */
import { expect, it } from 'vitest';
import { plateWeights } from '../../src/members/data/plate-weights.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'nominal,thickness,weight,weightAt40_8';
const printed = `
1/8,0.125,5.104,5.100
3/16,0.1875,7.656,7.650
1/4,0.25,10.208,10.200
5/16,0.3125,12.760,12.750
3/8,0.375,15.312,15.300
7/16,0.4375,17.865,17.850
1/2,0.5,20.417,20.400
9/16,0.5625,22.969,22.950
5/8,0.625,25.521,25.500
3/4,0.75,30.625,30.600
7/8,0.875,35.729,35.700
1,1,40.833,40.800
`;

it('plate weights: every row and figure as printed', () => {
  expect(pickColumns(plateWeights.rows, columns)).toEqual(readLines(columns, printed));
});
