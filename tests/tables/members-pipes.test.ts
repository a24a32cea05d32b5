/** pipes: the printed rows a second time. Source: AISC Shapes Database v16.0 / Steel Construction Manual 16th ed., a selection. */
import { expect, it } from 'vitest';
import { pipes } from '../../src/members/data/pipes.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'designation,shape,weight,area,outside,wall,designWall,Ix,Sx,rx,Iy,Sy,ry';
const printed = `
Pipe1/2STD,PIPE,0.85,0.234,0.84,0.109,0.101,0.016,0.0388,0.264,0.016,0.0388,0.264
Pipe3/4STD,PIPE,1.13,0.312,1.05,0.113,0.105,0.035,0.0671,0.336,0.035,0.0671,0.336
Pipe1STD,PIPE,1.68,0.469,1.315,0.133,0.124,0.083,0.126,0.423,0.083,0.126,0.423
Pipe1-1/4STD,PIPE,2.27,0.625,1.66,0.14,0.13,0.184,0.222,0.543,0.184,0.222,0.543
Pipe1-1/2STD,PIPE,2.72,0.749,1.9,0.145,0.135,0.293,0.309,0.626,0.293,0.309,0.626
Pipe2STD,PIPE,3.66,1.02,2.375,0.154,0.143,0.627,0.528,0.791,0.627,0.528,0.791
Pipe2-1/2STD,PIPE,5.8,1.61,2.875,0.203,0.189,1.45,1.01,0.952,1.45,1.01,0.952
Pipe3STD,PIPE,7.58,2.07,3.5,0.216,0.201,2.85,1.63,1.17,2.85,1.63,1.17
Pipe3-1/2STD,PIPE,9.12,2.5,4,0.226,0.211,4.52,2.26,1.34,4.52,2.26,1.34
Pipe4STD,PIPE,10.8,2.96,4.5,0.237,0.221,6.82,3.03,1.51,6.82,3.03,1.51
Pipe5STD,PIPE,14.6,4.01,5.563,0.258,0.241,14.3,5.14,1.88,14.3,5.14,1.88
Pipe6STD,PIPE,19,5.2,6.625,0.28,0.261,26.5,7.99,2.25,26.5,7.99,2.25
Pipe1-1/2XS,PIPE,3.63,1,1.9,0.2,0.186,0.372,0.392,0.61,0.372,0.392,0.61
Pipe2XS,PIPE,5.03,1.4,2.375,0.218,0.204,0.827,0.696,0.771,0.827,0.696,0.771
Pipe3XS,PIPE,10.3,2.83,3.5,0.3,0.28,3.7,2.11,1.14,3.7,2.11,1.14
Pipe4XS,PIPE,15,4.14,4.5,0.337,0.315,9.12,4.05,1.48,9.12,4.05,1.48
`;

it('pipes: every row and figure as printed', () => {
  expect(pickColumns(pipes.rows, columns)).toEqual(readLines(columns, printed));
});
