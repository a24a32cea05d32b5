/** raised-pattern floor plate: the printed rows a second time. Source: from memory. */
import { expect, it } from 'vitest';
import { floorPlate } from '../../src/members/data/floor-plate.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'nominal,thickness,weight,pattern';
const printed = `
18 ga,0.0478,2.4,0.448
16 ga,0.0598,3.0,0.558
14 ga,0.0747,3.75,0.700
13 ga,0.0897,4.5,0.837
12 ga,0.1046,5.25,0.979
1/8,0.125,6.16,1.056
3/16,0.1875,8.71,1.054
1/4,0.25,11.26,1.052
5/16,0.3125,13.81,1.050
3/8,0.375,16.37,1.058
1/2,0.5,21.47,1.053
5/8,0.625,26.58,1.059
3/4,0.75,31.68,1.055
7/8,0.875,36.79,1.061
1,1,41.89,1.057
`;

it('raised-pattern floor plate: every row and figure as printed', () => {
  expect(pickColumns(floorPlate.rows, columns)).toEqual(readLines(columns, printed));
});
