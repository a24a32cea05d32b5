/** Brakes, stopping, wheel nuts, hubs: the hardware on an axle. */
import { brakeSizes } from './data/brake-sizes.js';

export * from './brakes.js';
export type { HardwareError, HardwareNotAboveZero, NoBrakes } from './hardware-errors.js';
export * from './stopping.js';
export { axlesTables } from './tables.js';
export * from './wheel-hardware.js';

/** Which drum brake usually sits on which axle: a convention, not a rating. */
export const usualBrakeSizes = brakeSizes.rows;
