/** round tubes: the printed rows a second time. Source: AISC Shapes Database v16.0 / Steel Construction Manual 16th ed., a selection. */
import { expect, it } from 'vitest';
import { roundTubes } from '../../src/members/data/round-tubes.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'designation,shape,weight,area,outside,wall,designWall,Ix,Sx,rx,Iy,Sy,ry';
const printed = `
HSS1.660X0.140,HSS,2.27,0.625,1.66,0.14,0.13,0.184,0.222,0.543,0.184,0.222,0.543
HSS1.900X0.120,HSS,2.28,0.624,1.9,0.12,0.111,0.251,0.264,0.634,0.251,0.264,0.634
HSS1.900X0.145,HSS,2.72,0.749,1.9,0.145,0.135,0.293,0.309,0.626,0.293,0.309,0.626
HSS2.375X0.125,HSS,3.01,0.823,2.38,0.125,0.116,0.527,0.443,0.8,0.527,0.443,0.8
HSS2.375X0.154,HSS,3.66,1,2.38,0.154,0.143,0.627,0.528,0.791,0.627,0.528,0.791
HSS2.500X0.188,HSS,4.65,1.27,2.5,0.188,0.174,0.865,0.692,0.825,0.865,0.692,0.825
HSS2.875X0.203,HSS,5.8,1.59,2.88,0.203,0.189,1.45,1.01,0.952,1.45,1.01,0.952
HSS3.000X0.188,HSS,5.65,1.54,3,0.188,0.174,1.55,1.03,1,1.55,1.03,1
HSS3.500X0.188,HSS,6.66,1.82,3.5,0.188,0.174,2.52,1.44,1.18,2.52,1.44,1.18
HSS4.000X0.226,HSS,9.12,2.5,4,0.226,0.21,4.5,2.25,1.34,4.5,2.25,1.34
HSS4.500X0.237,HSS,10.8,2.96,4.5,0.237,0.22,6.79,3.02,1.52,6.79,3.02,1.52
HSS5.000X0.250,HSS,12.69,3.49,5,0.25,0.233,9.94,3.97,1.69,9.94,3.97,1.69
HSS6.625X0.280,HSS,18.99,5.2,6.63,0.28,0.26,26.4,7.96,2.25,26.4,7.96,2.25
`;

it('round tubes: every row and figure as printed', () => {
  expect(pickColumns(roundTubes.rows, columns)).toEqual(readLines(columns, printed));
});
