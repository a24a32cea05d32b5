/** Brakes, stopping, wheel nuts, hubs: the hardware on an axle. */

export type { BrakedKind, BrakePerformanceRow } from '../data/brake-performance.js';
export { axlesTables } from '../tables.js';
export * from './brake-performance.js';
export * from './brake-torque.js';
export * from './brakes.js';
export type { HardwareError, HardwareNotAboveZero, NoBrakes } from './hardware-errors.js';
export * from './stopping.js';
export * from './usual-hardware.js';
export * from './wheel-hardware.js';
