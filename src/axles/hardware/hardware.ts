/** Brakes, stopping, wheel nuts, hubs: the hardware on an axle. */

export { axlesTables } from '../tables.js';
export * from './brake-torque.js';
export * from './brakes.js';
export type { HardwareError, HardwareNotAboveZero, NoBrakes } from './hardware-errors.js';
export * from './stopping.js';
export * from './usual-hardware.js';
export * from './wheel-hardware.js';
