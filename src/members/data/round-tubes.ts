/** Round tube: nominal weight lb/ft goes with the nominal wall, area and properties with the design wall. A selection of the printed rows. */
import type { Table } from '../../trace/index.js';
import type { RoundTubeRow } from '../sections/shape-rows.js';

export const roundTubes = {
  name: 'round tube',
  source: { id: 'aisc-shapes-16', title: 'AISC Shapes Database v16.0 / Steel Construction Manual 16th ed.', grade: 'A', edition: 'v16.0, August 2023', note: 'a selection of rows' },
  authoritative: 'weight in lb/ft, from the nominal wall; area from the design wall',
  rows: [
    { designation: 'HSS1.660X0.140', shape: 'HSS', weight: '2.27', area: '0.625', outside: '1.66', wall: '0.14', designWall: '0.13', Ix: '0.184', Sx: '0.222', rx: '0.543', Iy: '0.184', Sy: '0.222', ry: '0.543' },
    { designation: 'HSS1.900X0.120', shape: 'HSS', weight: '2.28', area: '0.624', outside: '1.9', wall: '0.12', designWall: '0.111', Ix: '0.251', Sx: '0.264', rx: '0.634', Iy: '0.251', Sy: '0.264', ry: '0.634' },
    { designation: 'HSS1.900X0.145', shape: 'HSS', weight: '2.72', area: '0.749', outside: '1.9', wall: '0.145', designWall: '0.135', Ix: '0.293', Sx: '0.309', rx: '0.626', Iy: '0.293', Sy: '0.309', ry: '0.626' },
    { designation: 'HSS2.375X0.125', shape: 'HSS', weight: '3.01', area: '0.823', outside: '2.38', wall: '0.125', designWall: '0.116', Ix: '0.527', Sx: '0.443', rx: '0.8', Iy: '0.527', Sy: '0.443', ry: '0.8' },
    { designation: 'HSS2.375X0.154', shape: 'HSS', weight: '3.66', area: '1', outside: '2.38', wall: '0.154', designWall: '0.143', Ix: '0.627', Sx: '0.528', rx: '0.791', Iy: '0.627', Sy: '0.528', ry: '0.791' },
    { designation: 'HSS2.500X0.188', shape: 'HSS', weight: '4.65', area: '1.27', outside: '2.5', wall: '0.188', designWall: '0.174', Ix: '0.865', Sx: '0.692', rx: '0.825', Iy: '0.865', Sy: '0.692', ry: '0.825' },
    { designation: 'HSS2.875X0.203', shape: 'HSS', weight: '5.8', area: '1.59', outside: '2.88', wall: '0.203', designWall: '0.189', Ix: '1.45', Sx: '1.01', rx: '0.952', Iy: '1.45', Sy: '1.01', ry: '0.952' },
    { designation: 'HSS3.000X0.188', shape: 'HSS', weight: '5.65', area: '1.54', outside: '3', wall: '0.188', designWall: '0.174', Ix: '1.55', Sx: '1.03', rx: '1', Iy: '1.55', Sy: '1.03', ry: '1' },
    { designation: 'HSS3.500X0.188', shape: 'HSS', weight: '6.66', area: '1.82', outside: '3.5', wall: '0.188', designWall: '0.174', Ix: '2.52', Sx: '1.44', rx: '1.18', Iy: '2.52', Sy: '1.44', ry: '1.18' },
    { designation: 'HSS4.000X0.226', shape: 'HSS', weight: '9.12', area: '2.5', outside: '4', wall: '0.226', designWall: '0.21', Ix: '4.5', Sx: '2.25', rx: '1.34', Iy: '4.5', Sy: '2.25', ry: '1.34' },
    { designation: 'HSS4.500X0.237', shape: 'HSS', weight: '10.8', area: '2.96', outside: '4.5', wall: '0.237', designWall: '0.22', Ix: '6.79', Sx: '3.02', rx: '1.52', Iy: '6.79', Sy: '3.02', ry: '1.52' },
    { designation: 'HSS5.000X0.250', shape: 'HSS', weight: '12.69', area: '3.49', outside: '5', wall: '0.25', designWall: '0.233', Ix: '9.94', Sx: '3.97', rx: '1.69', Iy: '9.94', Sy: '3.97', ry: '1.69' },
    { designation: 'HSS6.625X0.280', shape: 'HSS', weight: '18.99', area: '5.2', outside: '6.63', wall: '0.28', designWall: '0.26', Ix: '26.4', Sx: '7.96', rx: '2.25', Iy: '26.4', Sy: '7.96', ry: '2.25' },
  ],
} as const satisfies Table<RoundTubeRow>;
