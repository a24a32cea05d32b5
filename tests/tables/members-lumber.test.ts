/** dressed lumber sizes: the printed rows a second time. Source: secondary tables quoting PS 20. */
import { expect, it } from 'vitest';
import { lumberSizes } from '../../src/members/data/lumber-sizes.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'nominal,thickness,width,area,weightAt35';
const printed = `
1x4,0.75,3.5,2.6250,0.64
1x6,0.75,5.5,4.1250,1.0
1x8,0.75,7.25,5.4375,1.32
1x10,0.75,9.25,6.9375,1.69
1x12,0.75,11.25,8.4375,2.05
5/4x6,1.0,5.5,5.5000,
2x4,1.5,3.5,5.2500,1.28
2x6,1.5,5.5,8.2500,2.0
2x8,1.5,7.25,10.8750,2.64
2x10,1.5,9.25,13.8750,3.37
2x12,1.5,11.25,16.8750,4.1
3x6,2.5,5.5,13.7500,3.34
3x8,2.5,7.25,18.1250,4.41
4x4,3.5,3.5,12.2500,2.98
4x6,3.5,5.5,19.2500,4.68
`;

it('dressed lumber sizes: every row and figure as printed', () => {
  expect(pickColumns(lumberSizes.rows, columns)).toEqual(readLines(columns, printed));
});
