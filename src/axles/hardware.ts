/** Brakes, stopping, wheel nuts, hubs: the hardware on an axle, and its tables. */
import type { Table } from '../trace/index.js';
import { brakeSizes } from './data/brake-sizes.js';
import { hubConventions } from './data/hub-conventions.js';
import { wheelTorque } from './data/wheel-torque.js';

export * from './brakes.js';
export type { HardwareError, HardwareNotAboveZero, NoBrakes } from './hardware-errors.js';
export * from './stopping.js';
export * from './wheel-hardware.js';

/** Which drum brake usually sits on which axle: a convention, not a rating. */
export const usualBrakeSizes = brakeSizes.rows;

export const hardwareTables: readonly Table<unknown>[] = [brakeSizes, wheelTorque, hubConventions];
