/** wood density by species: the printed rows a second time. Source: Wood Handbook figures by several copies, partly from memory. */
import { expect, it } from 'vitest';
import { woodDensity } from '../../src/members/data/wood-density.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'species|basic|at12|airDryLow|airDryHigh';
const printed = `
Pine, loblolly|0.47|0.51||
Pine, longleaf|0.54|0.59||
Pine, shortleaf|0.47|0.51||
Pine, slash|0.54|0.59||
Douglas-fir, coast|0.45|0.48||
Oak, white|0.6|0.68||
Oak, white (bur)|0.58|0.64||
Oak, northern red|0.56|0.63||
Oak, southern red|0.52|0.59||
Keruing / apitong|0.69||45|50
`;

it('wood density by species: every row and figure as printed', () => {
  expect(pickColumns(woodDensity.rows, columns, '|')).toEqual(readLines(columns, printed, '|'));
});
