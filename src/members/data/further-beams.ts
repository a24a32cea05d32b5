/** Further wide-flange and M beams met under trailers, from a copy that prints neither k nor rx and ry: nominal weight lb/ft, dimensions in inches, properties in in2, in4, in3. */
import type { Table } from '../../trace/index.js';
import type { BeamRow } from '../sections/shape-rows.js';

export const furtherBeams = {
  name: 'rolled beams, further rows',
  source: { id: 'aisc-shapes-copy', title: 'AISC shapes tables, as carried by an open-source structural library', grade: 'B', edition: 'undated', note: 'one copy, not read in the manual; a selection of rows; k, rx and ry are not in the copy' },
  authoritative: 'weight in lb/ft; dimensions in inches',
  rows: [
    { designation: 'W6X8.5', shape: 'W', weight: '8.5', area: '2.52', depth: '5.83', flangeWidth: '3.94', web: '0.17', flange: '0.195', Ix: '14.9', Sx: '5.1', Iy: '1.99', Sy: '1.01' },
    { designation: 'W8X24', shape: 'W', weight: '24', area: '7.08', depth: '7.93', flangeWidth: '6.5', web: '0.245', flange: '0.4', Ix: '82.7', Sx: '20.9', Iy: '18.3', Sy: '5.63' },
    { designation: 'W10X26', shape: 'W', weight: '26', area: '7.61', depth: '10.3', flangeWidth: '5.77', web: '0.26', flange: '0.44', Ix: '144', Sx: '27.9', Iy: '14.1', Sy: '4.89' },
    { designation: 'W10X30', shape: 'W', weight: '30', area: '8.84', depth: '10.5', flangeWidth: '5.81', web: '0.3', flange: '0.51', Ix: '170', Sx: '32.4', Iy: '16.7', Sy: '5.75' },
    { designation: 'W12X30', shape: 'W', weight: '30', area: '8.79', depth: '12.3', flangeWidth: '6.52', web: '0.26', flange: '0.44', Ix: '238', Sx: '38.6', Iy: '20.3', Sy: '6.24' },
    { designation: 'M6X3.7', shape: 'M', weight: '3.7', area: '1.09', depth: '5.92', flangeWidth: '2', web: '0.098', flange: '0.129', Ix: '5.96', Sx: '2.01', Iy: '0.173', Sy: '0.173' },
    { designation: 'M8X6.2', shape: 'M', weight: '6.2', area: '1.82', depth: '8', flangeWidth: '2.28', web: '0.129', flange: '0.177', Ix: '17.6', Sx: '4.39', Iy: '0.352', Sy: '0.308' },
    { designation: 'M10X9', shape: 'M', weight: '9', area: '2.65', depth: '10', flangeWidth: '2.69', web: '0.157', flange: '0.206', Ix: '39', Sx: '7.79', Iy: '0.672', Sy: '0.5' },
    { designation: 'M12X10', shape: 'M', weight: '10', area: '2.95', depth: '12', flangeWidth: '3.25', web: '0.149', flange: '0.18', Ix: '61.7', Sx: '10.3', Iy: '1.03', Sy: '0.636' },
    { designation: 'M12X11.8', shape: 'M', weight: '11.8', area: '3.47', depth: '12', flangeWidth: '3.07', web: '0.177', flange: '0.225', Ix: '72.2', Sx: '12', Iy: '1.09', Sy: '0.709' },
    { designation: 'M12.5X12.4', shape: 'M', weight: '12.4', area: '3.63', depth: '12.5', flangeWidth: '3.75', web: '0.155', flange: '0.228', Ix: '89.3', Sx: '14.2', Iy: '2.01', Sy: '1.07' },
  ],
} as const satisfies Table<BeamRow>;
