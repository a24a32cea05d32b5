/** Further rolled beams and channels: the rows a second time. Source: AISC shapes tables as carried by an open-source structural library; one copy, not read in the manual. */
import { expect, it } from 'vitest';
import { furtherBeams } from '../../src/members/data/further-beams.js';
import { furtherChannels } from '../../src/members/data/further-channels.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'designation,shape,weight,area,depth,flangeWidth,web,flange,Ix,Sx,Iy,Sy';
const beams = `
W6X8.5,W,8.5,2.52,5.83,3.94,0.17,0.195,14.9,5.1,1.99,1.01
W8X24,W,24,7.08,7.93,6.5,0.245,0.4,82.7,20.9,18.3,5.63
W10X26,W,26,7.61,10.3,5.77,0.26,0.44,144,27.9,14.1,4.89
W10X30,W,30,8.84,10.5,5.81,0.3,0.51,170,32.4,16.7,5.75
W12X30,W,30,8.79,12.3,6.52,0.26,0.44,238,38.6,20.3,6.24
M6X3.7,M,3.7,1.09,5.92,2,0.098,0.129,5.96,2.01,0.173,0.173
M8X6.2,M,6.2,1.82,8,2.28,0.129,0.177,17.6,4.39,0.352,0.308
M10X9,M,9,2.65,10,2.69,0.157,0.206,39,7.79,0.672,0.5
M12X10,M,10,2.95,12,3.25,0.149,0.18,61.7,10.3,1.03,0.636
M12X11.8,M,11.8,3.47,12,3.07,0.177,0.225,72.2,12,1.09,0.709
M12.5X12.4,M,12.4,3.63,12.5,3.75,0.155,0.228,89.3,14.2,2.01,1.07
`;
const channels = `
C5X9,C,9,2.64,5,1.89,0.325,0.32,8.89,3.56,0.624,0.444
C7X14.75,C,14.75,4.33,7,2.3,0.419,0.366,27.2,7.78,1.37,0.772
C9X20,C,20,5.87,9,2.65,0.448,0.413,60.9,13.5,2.41,1.17
C10X25,C,25,7.35,10,2.89,0.526,0.436,91.1,18.2,3.34,1.47
MC6X7,MC,7,2.09,6,1.88,0.179,0.291,11.4,3.81,0.603,0.439
MC8X20,MC,20,5.87,8,3.03,0.4,0.5,54.4,13.6,4.42,2.02
MC10X22,MC,22,6.45,10,3.32,0.29,0.575,102,20.5,6.4,2.75
MC12X31,MC,31,9.12,12,3.67,0.37,0.7,202,33.7,11.3,4.37
`;

it('further beams: every row and figure as printed', () => {
  expect(pickColumns(furtherBeams.rows, columns)).toEqual(readLines(columns, beams));
});
it('further channels: every row and figure as printed', () => {
  expect(pickColumns(furtherChannels.rows, columns)).toEqual(readLines(columns, channels));
});
it('both are marked as one copy that was not read in the manual', () => {
  expect([furtherBeams.source, furtherChannels.source].map(({ grade, note }) => [grade, note.slice(0, 31)])).toEqual([
    ['B', 'one copy, not read in the manua'],
    ['B', 'one copy, not read in the manua'],
  ]);
});
