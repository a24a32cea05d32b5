/** Pipe: nominal weight lb/ft goes with the nominal wall, area and properties with the design wall. A selection of the printed rows. */
import type { Table } from '../../trace/index.js';
import type { RoundTubeRow } from '../sections/shape-rows.js';

export const pipes = {
  name: 'pipe',
  source: { id: 'aisc-shapes-16', title: 'AISC Shapes Database v16.0 / Steel Construction Manual 16th ed.', grade: 'A', edition: 'v16.0, August 2023', note: 'a selection of rows' },
  authoritative: 'weight in lb/ft, from the nominal wall; area from the design wall',
  rows: [
    { designation: 'Pipe1/2STD', shape: 'PIPE', weight: '0.85', area: '0.234', outside: '0.84', wall: '0.109', designWall: '0.101', Ix: '0.016', Sx: '0.0388', rx: '0.264', Iy: '0.016', Sy: '0.0388', ry: '0.264' },
    { designation: 'Pipe3/4STD', shape: 'PIPE', weight: '1.13', area: '0.312', outside: '1.05', wall: '0.113', designWall: '0.105', Ix: '0.035', Sx: '0.0671', rx: '0.336', Iy: '0.035', Sy: '0.0671', ry: '0.336' },
    { designation: 'Pipe1STD', shape: 'PIPE', weight: '1.68', area: '0.469', outside: '1.315', wall: '0.133', designWall: '0.124', Ix: '0.083', Sx: '0.126', rx: '0.423', Iy: '0.083', Sy: '0.126', ry: '0.423' },
    { designation: 'Pipe1-1/4STD', shape: 'PIPE', weight: '2.27', area: '0.625', outside: '1.66', wall: '0.14', designWall: '0.13', Ix: '0.184', Sx: '0.222', rx: '0.543', Iy: '0.184', Sy: '0.222', ry: '0.543' },
    { designation: 'Pipe1-1/2STD', shape: 'PIPE', weight: '2.72', area: '0.749', outside: '1.9', wall: '0.145', designWall: '0.135', Ix: '0.293', Sx: '0.309', rx: '0.626', Iy: '0.293', Sy: '0.309', ry: '0.626' },
    { designation: 'Pipe2STD', shape: 'PIPE', weight: '3.66', area: '1.02', outside: '2.375', wall: '0.154', designWall: '0.143', Ix: '0.627', Sx: '0.528', rx: '0.791', Iy: '0.627', Sy: '0.528', ry: '0.791' },
    { designation: 'Pipe2-1/2STD', shape: 'PIPE', weight: '5.8', area: '1.61', outside: '2.875', wall: '0.203', designWall: '0.189', Ix: '1.45', Sx: '1.01', rx: '0.952', Iy: '1.45', Sy: '1.01', ry: '0.952' },
    { designation: 'Pipe3STD', shape: 'PIPE', weight: '7.58', area: '2.07', outside: '3.5', wall: '0.216', designWall: '0.201', Ix: '2.85', Sx: '1.63', rx: '1.17', Iy: '2.85', Sy: '1.63', ry: '1.17' },
    { designation: 'Pipe3-1/2STD', shape: 'PIPE', weight: '9.12', area: '2.5', outside: '4', wall: '0.226', designWall: '0.211', Ix: '4.52', Sx: '2.26', rx: '1.34', Iy: '4.52', Sy: '2.26', ry: '1.34' },
    { designation: 'Pipe4STD', shape: 'PIPE', weight: '10.8', area: '2.96', outside: '4.5', wall: '0.237', designWall: '0.221', Ix: '6.82', Sx: '3.03', rx: '1.51', Iy: '6.82', Sy: '3.03', ry: '1.51' },
    { designation: 'Pipe5STD', shape: 'PIPE', weight: '14.6', area: '4.01', outside: '5.563', wall: '0.258', designWall: '0.241', Ix: '14.3', Sx: '5.14', rx: '1.88', Iy: '14.3', Sy: '5.14', ry: '1.88' },
    { designation: 'Pipe6STD', shape: 'PIPE', weight: '19', area: '5.2', outside: '6.625', wall: '0.28', designWall: '0.261', Ix: '26.5', Sx: '7.99', rx: '2.25', Iy: '26.5', Sy: '7.99', ry: '2.25' },
    { designation: 'Pipe1-1/2XS', shape: 'PIPE', weight: '3.63', area: '1', outside: '1.9', wall: '0.2', designWall: '0.186', Ix: '0.372', Sx: '0.392', rx: '0.61', Iy: '0.372', Sy: '0.392', ry: '0.61' },
    { designation: 'Pipe2XS', shape: 'PIPE', weight: '5.03', area: '1.4', outside: '2.375', wall: '0.218', designWall: '0.204', Ix: '0.827', Sx: '0.696', rx: '0.771', Iy: '0.827', Sy: '0.696', ry: '0.771' },
    { designation: 'Pipe3XS', shape: 'PIPE', weight: '10.3', area: '2.83', outside: '3.5', wall: '0.3', designWall: '0.28', Ix: '3.7', Sx: '2.11', rx: '1.14', Iy: '3.7', Sy: '2.11', ry: '1.14' },
    { designation: 'Pipe4XS', shape: 'PIPE', weight: '15', area: '4.14', outside: '4.5', wall: '0.337', designWall: '0.315', Ix: '9.12', Sx: '4.05', rx: '1.48', Iy: '9.12', Sy: '4.05', ry: '1.48' },
  ],
} as const satisfies Table<RoundTubeRow>;
