/** Further rolled channels met under trailers, from a copy that prints neither k, rx, ry nor the place of the centre: nominal weight lb/ft, dimensions in inches, properties in in2, in4, in3. */
import type { Table } from '../../trace/index.js';
import type { ChannelRow } from '../sections/shape-rows.js';

export const furtherChannels = {
  name: 'rolled channels, further rows',
  source: { id: 'aisc-shapes-copy', title: 'AISC shapes tables, as carried by an open-source structural library', grade: 'B', edition: 'undated', note: 'one copy, not read in the manual; a selection of rows; k, rx, ry and x-bar are not in the copy' },
  authoritative: 'weight in lb/ft; dimensions in inches',
  rows: [
    { designation: 'C5X9', shape: 'C', weight: '9', area: '2.64', depth: '5', flangeWidth: '1.89', web: '0.325', flange: '0.32', Ix: '8.89', Sx: '3.56', Iy: '0.624', Sy: '0.444' },
    { designation: 'C7X14.75', shape: 'C', weight: '14.75', area: '4.33', depth: '7', flangeWidth: '2.3', web: '0.419', flange: '0.366', Ix: '27.2', Sx: '7.78', Iy: '1.37', Sy: '0.772' },
    { designation: 'C9X20', shape: 'C', weight: '20', area: '5.87', depth: '9', flangeWidth: '2.65', web: '0.448', flange: '0.413', Ix: '60.9', Sx: '13.5', Iy: '2.41', Sy: '1.17' },
    { designation: 'C10X25', shape: 'C', weight: '25', area: '7.35', depth: '10', flangeWidth: '2.89', web: '0.526', flange: '0.436', Ix: '91.1', Sx: '18.2', Iy: '3.34', Sy: '1.47' },
    { designation: 'MC6X7', shape: 'MC', weight: '7', area: '2.09', depth: '6', flangeWidth: '1.88', web: '0.179', flange: '0.291', Ix: '11.4', Sx: '3.81', Iy: '0.603', Sy: '0.439' },
    { designation: 'MC8X20', shape: 'MC', weight: '20', area: '5.87', depth: '8', flangeWidth: '3.03', web: '0.4', flange: '0.5', Ix: '54.4', Sx: '13.6', Iy: '4.42', Sy: '2.02' },
    { designation: 'MC10X22', shape: 'MC', weight: '22', area: '6.45', depth: '10', flangeWidth: '3.32', web: '0.29', flange: '0.575', Ix: '102', Sx: '20.5', Iy: '6.4', Sy: '2.75' },
    { designation: 'MC12X31', shape: 'MC', weight: '31', area: '9.12', depth: '12', flangeWidth: '3.67', web: '0.37', flange: '0.7', Ix: '202', Sx: '33.7', Iy: '11.3', Sy: '4.37' },
  ],
} as const satisfies Table<ChannelRow>;
